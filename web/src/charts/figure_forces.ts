// A force on the body as an arrow: pushing up, its point touches where it acts; pulling down, its tail does.
import type { DrawnForce, DrawnSetup, Vector } from './figure_drawn';
import { fixed } from '../quantities/shown';
import type { View } from './figure_frame';

export const markLength = 40; // px of the arrow in the key
const ladder = [10, 20, 50, 100, 200, 250, 500, 750, 1000, 1500, 2000, 3000, 5000, 10000];

// Newtons of the key's arrow, so that the largest is no longer than `longest` px.
export function newtonsOfMark(largest: number, longest = 72): number {
  return ladder.find((each) => (largest / each) * markLength <= longest) ?? 20000;
}

export interface Arrow {
  shaft: string;
  head: string; // transform of a head that points up
  tail: Vector;
  up: boolean;
}

export function arrowOf(force: DrawnForce, view: View, newtons: number): Arrow {
  const at = view.at([force.x, force.y]);
  const along: Vector = [(force.force_x / newtons) * markLength, (-force.force_y / newtons) * markLength];
  const up = force.force_y >= 0;
  const tip: Vector = up ? at : [at[0] + along[0], at[1] + along[1]];
  const tail: Vector = up ? [at[0] - along[0], at[1] - along[1]] : at;
  const turn = (Math.atan2(along[0], -along[1]) * 180) / Math.PI;
  const size = Math.hypot(...along);
  const short: Vector = size > 8 ? [tip[0] - (along[0] / size) * 8, tip[1] - (along[1] / size) * 8] : tail;
  return { shaft: `M${tail[0]},${tail[1]}L${short[0]},${short[1]}`, head: `translate(${tip[0]} ${tip[1]}) rotate(${turn})`, tail, up };
}

// The lower edge of the pad's top as it is drawn, px: 9 cm thick, or less when it lies nearer the floor.
export function padBottom(drawing: DrawnSetup, view: View): number {
  const high = drawing.pad_height ?? 0;
  return view.at([0, drawing.floor_y + Math.max(0, high - 0.09)])[1];
}

// Straight up in one number; aslant in its two parts, as the server gives them.
export function forceWords({ force_x, force_y }: DrawnForce): string {
  const up = `${fixed(force_y, 0)} N`;
  return Math.abs(force_x) < 0.5 ? up : `${up} up, ${fixed(Math.abs(force_x), 0)} N ${force_x < 0 ? 'back' : 'forward'}`;
}
