// Small things kept on this device (localStorage): what is read without network, and what was typed and not sent.
export function onDevice<T>(place: string): T | undefined {
  try {
    return JSON.parse(localStorage.getItem(`amentum ${place}`) ?? 'null') ?? undefined;
  } catch {
    return undefined; // no storage, or not ours
  }
}

// False when this device keeps nothing.
export function keepOnDevice(place: string, value: unknown): boolean {
  try {
    localStorage.setItem(`amentum ${place}`, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export function dropFromDevice(place: string): void {
  try {
    localStorage.removeItem(`amentum ${place}`);
  } catch {
    // nothing was kept either
  }
}

// The day by this device's own clock and place: for a form whose server cannot be asked for its day.
export function dayHere(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

// Who writes, for one day only: tomorrow another person may hold the tablet.
export function writerToday(): string {
  const kept = onDevice<{ day: string; name: string }>('who writes');
  return kept?.day === dayHere() ? kept.name : '';
}
export const keepWriter = (name: string): boolean => keepOnDevice('who writes', { day: dayHere(), name });
