// A joint moment as an arc: it starts at the bone above the joint and sweeps round the side whose muscles straighten it
// (in front of the knee, behind hip and ankle); a moment that bends sweeps the other way. The sweep reads as newton-metres.
import { less, type Points, type Vector } from './figure_drawn';

// Newton-metres of a quarter turn: the smallest of a ladder that keeps the largest moment inside `most` degrees.
const ladder = [1, 2, 5, 10, 20, 25, 50, 75, 100, 120, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 3000, 5000];
export function quarterTurn(largest: number, most = 270): number {
  return ladder.find((each) => (90 * largest) / each <= most) ?? 10000;
}

export function sweepOf(moment: number, quarter: number): number {
  return Math.max(-350, Math.min(350, (90 * moment) / quarter)); // degrees
}

// Each joint: the point itself, the one above it on the body, and whether straightening muscles lie clockwise from there
// (seen with the face to the right).
// Of a throw: turning what lies above forward is positive at every joint, and sweeps forward.
const joints: Record<string, { at: string; above: string; clockwise: boolean }> = {
  lead_ankle: { at: 'ankle', above: 'knee', clockwise: false },
  lead_knee: { at: 'knee', above: 'hip', clockwise: true },
  lead_hip: { at: 'hip', above: 'shoulder', clockwise: false },
  throw_ankle: { at: 'ankle', above: 'knee', clockwise: true },
  throw_knee: { at: 'knee', above: 'hip', clockwise: true },
  throw_hip: { at: 'hip', above: 'shoulder', clockwise: true },
  throw_shoulder: { at: 'shoulder', above: 'elbow', clockwise: true },
  throw_elbow: { at: 'elbow', above: 'wrist', clockwise: true },
  elbow: { at: 'elbow', above: 'shoulder', clockwise: true },
  shoulder: { at: 'shoulder', above: 'head_top', clockwise: true },
};

export interface ArcPlace {
  centre: Vector; // metres
  start: number; // degrees from straight up, clockwise
  turn: 1 | -1; // clockwise: 1
}

export function arcPlace(joint: string, points: Points): ArcPlace | undefined {
  const known = joints[joint];
  const centre = known && points[known.at];
  if (!centre) return undefined;
  const above = points[known.above];
  const [x, y] = above ? less(above, centre) : [0, 1];
  return { centre, start: (Math.atan2(x, y) * 180) / Math.PI, turn: known.clockwise ? 1 : -1 };
}

// A point of the picture, `degrees` clockwise from straight up around a centre.
export function onCircle([x, y]: Vector, radius: number, degrees: number): Vector {
  const turn = (degrees * Math.PI) / 180;
  return [x + radius * Math.sin(turn), y - radius * Math.cos(turn)];
}

export function arcPath(centre: Vector, radius: number, from: number, to: number): string {
  if (Math.abs(to - from) < 0.05) return '';
  const [x0, y0] = onCircle(centre, radius, from);
  const [x1, y1] = onCircle(centre, radius, to);
  return `M${x0},${y0}A${radius},${radius} 0 ${Math.abs(to - from) > 180 ? 1 : 0} ${to > from ? 1 : 0} ${x1},${y1}`;
}

export function wedgePath(centre: Vector, radius: number, from: number, to: number): string {
  const arc = arcPath(centre, radius, from, to);
  return arc && `${arc}L${centre[0]},${centre[1]}Z`;
}

// Quarter turns passed on the way, each a tick.
export function quarterTicks(sweep: number): number[] {
  return Array.from({ length: Math.floor(Math.abs(sweep) / 90) }, (_, i) => 90 * (i + 1) * Math.sign(sweep));
}
