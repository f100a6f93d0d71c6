// The body standing, seen from the side: joints one above the other, the arm hanging with a slight bend. In metres.
import { add, times, type Points, type Vector } from '../../charts/figure_drawn';

export interface Part {
  row: string;
  length: number; // in the unit of the answer, as centre is
  centre: number; // from the first-named end
}

const rows = {
  foot: ['Foot'],
  shank: ['Shank2', 'Leg'],
  thigh: ['Thigh'],
  trunk: ['Trunk3', 'TrunkHeadNeck'],
  upper_arm: ['UpperArm'],
  forearm: ['Forearm'],
  hand: ['Hand'],
  head: ['Head2'],
} as const;
export type PartName = keyof typeof rows;

export function nameOfRow(row: string): PartName | undefined {
  return (Object.keys(rows) as PartName[]).find((name) => (rows[name] as readonly string[]).includes(row));
}

export interface Standing {
  points: Points;
  centres: Partial<Record<PartName, Vector>>;
}

const hang = (degrees: number): Vector => [Math.sin((degrees * Math.PI) / 180), -Math.cos((degrees * Math.PI) / 180)]; // forward positive

export function standing(parts: Part[], ankleHeight: number, stature: number, metres: (value: number) => number): Standing {
  const part = (name: PartName) => parts.find((each) => nameOfRow(each.row) === name);
  const size = (name: PartName) => metres(part(name)?.length ?? 0);
  const foot = size('foot');
  const ankle: Vector = [0, metres(ankleHeight)];
  const knee = add(ankle, [0, size('shank')]);
  const hip = add(knee, [0, size('thigh')]);
  const shoulder = add(hip, [0, size('trunk')]);
  const elbow = add(shoulder, times(size('upper_arm'), hang(-6)));
  const wrist = add(elbow, times(size('forearm'), hang(14)));
  const grip = add(wrist, times(size('hand'), hang(18)));
  const points = {
    heel: [-0.25 * foot, 0] as Vector, toe: [0.75 * foot, 0] as Vector, ankle, knee, hip, shoulder, elbow, wrist, grip,
    head_top: [0, metres(stature)] as Vector,
  };
  const ends: Record<PartName, [Vector, Vector]> = {
    foot: [[points.heel[0], ankle[1] * 0.45], [points.toe[0], ankle[1] * 0.45]], shank: [knee, ankle], thigh: [hip, knee], trunk: [shoulder, hip],
    upper_arm: [shoulder, elbow], forearm: [elbow, wrist], hand: [wrist, grip], head: [points.head_top, shoulder],
  };
  const centres: Standing['centres'] = {};
  for (const each of parts) {
    const name = nameOfRow(each.row);
    if (!name || !each.length) continue;
    const [from, to] = ends[name];
    const along: Vector = [to[0] - from[0], to[1] - from[1]];
    const whole = Math.hypot(...along) || 1;
    centres[name] = add(from, times(metres(each.centre) / whole, along));
  }
  return { points, centres };
}
