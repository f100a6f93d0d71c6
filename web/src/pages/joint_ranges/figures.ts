// Line figures of how each angle is measured, drawn by us: position, moving segment, axis, what is held still, where the
// inclinometer lies (common practice, no source; the words stand beside it). Coordinates of a 300 by 190 picture of the
// left side; the right side is its mirror image. Angles are of the drawing: degrees from straight up, clockwise.
export interface Figure {
  bench: string[];
  body: string[]; // paths that stay still
  head: [number, number];
  axis: [number, number];
  length: number; // of the moving segment
  from: number;
  to: number;
  tool: number; // how far along the segment its middle lies, 0 to 1
  arc: number; // how far out the arrow of the movement runs, 0 to 1
  held: [number, number, number][]; // tip of a wedge and where it points
}

export type Point = [number, number];

const benchLying = ['M16,140H284', 'M44,140V178', 'M256,140V178'];
const benchSitting = ['M48,106H252', 'M66,106V182', 'M234,106V182'];
const lyingStraight = ['M62,128H164', 'M164,128L270,132'];
const lyingBent = ['M62,128H164', 'M164,128L204,88', 'M204,88L226,136H242'];
const sitting = ['M150,42V94', 'M122,50H178', 'M122,50L132,72L164,66', 'M178,50L168,72L136,66', 'M132,94H168', 'M132,94L108,110', 'M168,94L192,110', 'M108,110V178'];

const lying: Pick<Figure, 'bench' | 'head'> = { bench: benchLying, head: [46, 122] };
const rotation = { ...lying, body: lyingStraight, axis: [86, 118] as Point, length: 70, from: 0, tool: 0.74, arc: 0.42, held: [[114, 124, 180]] as Figure['held'] };
const hip = { bench: benchSitting, body: sitting, head: [150, 26] as Point, axis: [192, 110] as Point, length: 70, from: 180, tool: 0.74, arc: 0.42, held: [[126, 88, 90], [174, 88, 270]] as Figure['held'] };

export const figures: Record<string, Figure> = {
  shoulder_external_rotation: { ...rotation, to: -56 },
  shoulder_internal_rotation: { ...rotation, to: 48 },
  shoulder_flexion: { ...lying, body: lyingBent, axis: [86, 120], length: 86, from: 88, to: -56, tool: 0.36, arc: 0.66, held: [[140, 124, 180]] },
  hip_internal_rotation: { ...hip, to: 142 },
  hip_external_rotation: { ...hip, to: 214 },
};

export function along(figure: Figure, angle: number, distance: number): Point {
  const turn = (angle * Math.PI) / 180;
  return [figure.axis[0] + distance * Math.sin(turn), figure.axis[1] - distance * Math.cos(turn)];
}

// The way of the movement, a little short of the segment at its end, and the arrow's head there.
export function movement(figure: Figure): { arc: string; head: [Point, number] } {
  const radius = figure.length * figure.arc;
  const clockwise = figure.to > figure.from;
  const last = figure.to + (clockwise ? -9 : 9);
  const [x0, y0] = along(figure, figure.from, radius);
  const [x1, y1] = along(figure, last, radius);
  return { arc: `M${x0},${y0}A${radius},${radius} 0 0 ${clockwise ? 1 : 0} ${x1},${y1}`, head: [[x1, y1], last + (clockwise ? 90 : -90)] };
}
