// Which two blocks the address names: "first" or "first,second", so that what is compared can be kept and sent.
export interface Chosen {
  first: string;
  second: string; // '' while none is chosen
}

export function chosenOf(name: string): Chosen {
  const [first = '', second = ''] = name.split(',');
  return { first, second };
}

export function nameOf(chosen: Chosen): string {
  return chosen.second ? `${chosen.first},${chosen.second}` : chosen.first;
}

// The block to lay beside the first when none is chosen: the newest other.
export function otherThan(first: string, blocks: string[]): string {
  return blocks.find((each) => each !== first) ?? '';
}
