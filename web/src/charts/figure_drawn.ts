// What the server gives to draw a posture: metres, x forward, y up, from the floor under the lead ankle.
export interface DrawnPoint {
  point: string;
  x: number;
  y: number;
}
export interface DrawnForce {
  force: string;
  x: number;
  y: number;
  force_x: number;
  force_y: number;
}
export interface DrawnSetup {
  points: DrawnPoint[];
  forces: DrawnForce[];
  foot_low: number;
  foot_high: number;
  pressure_x: number;
  pressure_error: number;
  balance_x: number;
  floor_y: number;
  pad_x?: number | null | undefined;
  pad_height?: number | null | undefined;
  box_height?: number | null | undefined;
  disc_radius?: number | null | undefined;
  scale_moment: number;
}
export interface DrawnMoment {
  joint: string; // lead_knee, elbow, ...
  value: number;
  low: number;
  high: number;
  name: string; // "knee"
  text: string; // "223 N m", as shown beside the arc
  more?: string; // "80 %: 190 to 256"
}

export type Vector = [number, number];
export type Points = Partial<Record<string, Vector>>;

export function pointsOf(drawing: DrawnSetup): Points {
  return Object.fromEntries(drawing.points.map((each) => [each.point, [each.x, each.y] as Vector]));
}

export const add = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1]];
export const less = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1]];
export const times = (k: number, a: Vector): Vector => [k * a[0], k * a[1]];
export const long = (a: Vector): number => Math.hypot(a[0], a[1]);
export const unit = (a: Vector): Vector => (long(a) > 0 ? times(1 / long(a), a) : [0, 1]);
export const left = (a: Vector): Vector => [-a[1], a[0]]; // turned a quarter counterclockwise, y up
