// From an answer to what the figure draws: which joints bear an arc, the frame of its lift, and the scales of its signs.
import { liftFrame, union, extentOf, type WorldFrame } from '../../charts/figure_frame';
import { newtonsOfMark } from '../../charts/figure_forces';
import { quarterTurn } from '../../charts/figure_arcs';
import type { DrawnMoment } from '../../charts/figure_drawn';
import { between, withUnit } from '../../quantities/shown';
import { solveSetupWords as say } from '../../words/solve_setup';
import { inMetres } from './setup_request';
import type { ShownJoint, Solved } from './solved';

export function momentsOf(joints: ShownJoint[]): DrawnMoment[] {
  return joints
    .filter((each) => !each.joint.startsWith('rear_'))
    .map(({ joint, moment }) => ({
      joint, value: moment.value, low: moment.low, high: moment.high,
      name: say.short[joint] ?? joint, text: withUnit(moment), more: `80 %: ${between(moment)}`,
    }));
}

export interface Paper { // of one lift and body; it only ever grows
  frame: WorldFrame;
  quarter: number; // N m of a quarter turn
  newtons: number; // of the arrow in the key
}

const highest = (answer: Solved, key: string) => {
  const setting = answer.settings.find((each) => each.key === key);
  return setting ? inMetres(setting.high, setting.unit) : 0;
};
export const staturesOf = (answer: Solved) => inMetres(answer.body.stature, answer.body.length_unit);

export function paperOf(answer: Solved, before?: Paper): Paper {
  const stature = staturesOf(answer);
  const base = liftFrame({ lift: answer.lift, stature, stance: highest(answer, 'stance'), box: highest(answer, 'box') });
  const moments = momentsOf(answer.joints).flatMap((each) => [each.value, each.low, each.high].map(Math.abs));
  const quarter = quarterTurn(Math.max(1, answer.drawing.scale_moment, ...moments));
  const forces = answer.drawing.forces.filter((each) => each.force !== 'load').map((each) => Math.hypot(each.force_x, each.force_y));
  const newtons = newtonsOfMark(Math.max(100, ...forces));
  const frame = union([base, extentOf(answer.drawing), ...(before ? [before.frame] : [])]);
  return { frame, quarter: Math.max(quarter, before?.quarter ?? 0), newtons: Math.max(newtons, before?.newtons ?? 0) };
}

export function bothPapers(a: Paper, b: Paper): Paper {
  return { frame: union([a.frame, b.frame]), quarter: Math.max(a.quarter, b.quarter), newtons: Math.max(a.newtons, b.newtons) };
}
