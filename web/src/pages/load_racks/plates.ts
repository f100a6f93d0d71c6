// How plates are named and drawn, and how one stack becomes the next. Drawing proportions: discs of 10 kg and more are
// 450 mm across, as in competition [IwfRules]; lighter ones 450 x sqrt(kg / 20) mm, at least 90, and a thickness of
// 10 + 1.6 x kg mm are a proposal of this project.
export interface Run {
  label: string;
  mass: number;
  count: number;
}

export interface Plate {
  name: string; // what stands on it: a hand looks for the stamp, not for the weighed mass
  mass: number;
}

const kilograms = (mass: number, unit: string) => (unit === 'lb' ? mass * 0.45359237 : mass);

export function diameterMm(mass: number, unit: string): number {
  const kg = kilograms(mass, unit);
  return kg >= 10 ? 450 : Math.max(90, 450 * Math.sqrt(kg / 20));
}

export function thicknessMm(mass: number, unit: string): number {
  return 10 + 1.6 * kilograms(mass, unit);
}

// "45 lb plate" in a gym that speaks pounds is "45", "35 lb plate, old" is "35 old", "20 kg plate" stays "20 kg".
export function nameOf(label: string, unit: string): string {
  const stamp = label.match(/^([\d.]+) ?(lb|kg)s?(?: plates?)?,?(.*)$/);
  if (!stamp) return label;
  return stamp[1] + (stamp[2] === unit ? '' : ` ${stamp[2]}`) + stamp[3];
}

export function oneByOne(runs: Run[], unit: string): Plate[] {
  return runs.flatMap((run) => Array.from({ length: run.count }, () => ({ name: nameOf(run.label, unit), mass: run.mass })));
}

export interface Change {
  off: Plate[]; // in the order they come off: from the outside
  on: Plate[]; // in the order they go on
  stay: number; // innermost plates that stay
}

export function changeOf(from: Plate[], to: Plate[]): Change {
  let stay = 0;
  while (stay < from.length && stay < to.length && from[stay]!.mass === to[stay]!.mass) stay += 1;
  return { off: from.slice(stay).reverse(), on: to.slice(stay), stay };
}

export function plain(mass: number): string {
  return String(Number(mass.toFixed(2)));
}
