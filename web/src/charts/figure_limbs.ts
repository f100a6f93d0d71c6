// Outlines of the body's parts in side view, face to the right: our own drawing, widths as shares of stature.
// They say where a part lies and nothing about how thick this athlete is.
import { curveCatmullRomClosed, line } from 'd3-shape';
import { add, left, less, long, times, unit, type Points, type Vector } from './figure_drawn';

type Station = [along: number, ahead: number, behind: number]; // share of the part's length, then of stature

const thigh: Station[] = [[-0.1, 0.012, 0.02], [-0.04, 0.034, 0.046], [0.1, 0.045, 0.056], [0.35, 0.047, 0.047], [0.65, 0.039, 0.035], [0.88, 0.03, 0.027], [1, 0.03, 0.026], [1.05, 0.016, 0.016]];
const shank: Station[] = [[-0.06, 0.014, 0.014], [0, 0.028, 0.026], [0.1, 0.025, 0.031], [0.28, 0.022, 0.039], [0.5, 0.02, 0.031], [0.75, 0.016, 0.019], [0.95, 0.016, 0.017], [1.04, 0.012, 0.012]];
const trunk: Station[] = [[-0.17, 0.01, 0.02], [-0.12, 0.036, 0.05], [0.02, 0.052, 0.067], [0.18, 0.054, 0.056], [0.4, 0.05, 0.041], [0.62, 0.06, 0.053], [0.8, 0.064, 0.064], [0.94, 0.05, 0.056], [1.04, 0.028, 0.036], [1.1, 0.022, 0.026], [1.3, 0.021, 0.025], [1.4, 0.012, 0.014]];
const upperArm: Station[] = [[-0.12, 0.012, 0.012], [-0.04, 0.029, 0.029], [0.2, 0.029, 0.028], [0.6, 0.023, 0.023], [0.95, 0.018, 0.019], [1.06, 0.01, 0.011]];
const forearm: Station[] = [[-0.05, 0.012, 0.012], [0.05, 0.02, 0.02], [0.25, 0.022, 0.021], [0.7, 0.015, 0.014], [1, 0.012, 0.012], [1.05, 0.008, 0.008]];
const hand: Station[] = [[-0.1, 0.009, 0.009], [0.15, 0.015, 0.013], [0.6, 0.017, 0.014], [0.95, 0.012, 0.011], [1.08, 0.005, 0.005]];
// Head in profile: ahead and down from its top, in heights of the head.
const profile: Vector[] = [[0, 0], [0.2, 0.04], [0.33, 0.16], [0.36, 0.34], [0.36, 0.44], [0.45, 0.6], [0.37, 0.66], [0.38, 0.77], [0.35, 0.9], [0.24, 0.97], [0.08, 0.9], [-0.06, 0.92], [-0.26, 0.8], [-0.38, 0.52], [-0.39, 0.28], [-0.22, 0.06]];
// Foot: ahead of the ankle in lengths of the foot, and above the sole in heights of the ankle.
const foot: Vector[] = [[-0.075, 1.5], [-0.1, 1.05], [-0.18, 0.72], [-0.24, 0.4], [-0.24, 0.1], [-0.19, 0], [-0.02, 0.02], [0.2, 0.08], [0.42, 0.01], [0.6, 0], [0.73, 0.05], [0.75, 0.24], [0.64, 0.42], [0.42, 0.66], [0.22, 1], [0.085, 1.5]];

const closed = line<Vector>().curve(curveCatmullRomClosed.alpha(0.5));
export type ToPicture = (point: Vector) => Vector;
const outline = (points: Vector[], to: ToPicture) => closed(points.map(to)) ?? '';

// From the upper end to the lower one, hanging down: ahead lies to the right of a part that hangs.
function hanging(from: Vector, to: Vector, stations: Station[], stature: number): Vector[] {
  const along = less(to, from);
  const ahead = left(unit(along));
  const side = (share: number, wide: number) => add(add(from, times(share, along)), times(wide * stature, ahead));
  return [...stations.map(([t, front]) => side(t, front)), ...[...stations].reverse().map(([t, , back]) => side(t, -back))];
}

// Upright, from the hip up: ahead lies to the right.
function upright(from: Vector, to: Vector, stations: Station[], stature: number): Vector[] {
  const along = less(to, from);
  const ahead = times(-1, left(unit(along)));
  const side = (share: number, wide: number) => add(add(from, times(share, along)), times(wide * stature, ahead));
  return [...stations.map(([t, front]) => side(t, front)), ...[...stations].reverse().map(([t, , back]) => side(t, -back))];
}

function headOf(shoulder: Vector, top: Vector, stature: number): Vector[] {
  const up = unit(less(top, shoulder));
  const ahead = times(-1, left(up));
  const high = 0.13 * stature;
  return profile.map(([x, down]) => add(top, add(times(x * high, ahead), times(-down * high, up))));
}

// Along the sole from heel to toe; the instep lies to its left.
function footOf(ankle: Vector, along: Vector, length: number, ankleHeight: number): Vector[] {
  const instep = left(along);
  return foot.map(([x, up]) => add(ankle, add(times(x * length, along), times((up - 1) * ankleHeight, instep))));
}

export interface LimbPaths {
  rear: string[];
  trunk: string[];
  lead: string[];
  arm: string[];
}

// Those parts whose two ends are given.
export function limbPaths(points: Points, stature: number, to: ToPicture): LimbPaths {
  const part = (from: string, until: string, draw: (a: Vector, b: Vector) => Vector[]) => {
    const [a, b] = [points[from], points[until]];
    return a && b ? [outline(draw(a, b), to)] : [];
  };
  const limb = (stations: Station[]) => (a: Vector, b: Vector) => hanging(a, b, stations, stature);
  const leg = (knee: string, ankle: string) => [...part('hip', knee, limb(thigh)), ...part(knee, ankle, limb(shank))];
  return {
    rear: [...leg('rear_knee', 'rear_ankle'), ...rearFoot(points, stature).map((each) => outline(each, to))],
    trunk: [
      ...part('hip', 'shoulder', (a, b) => upright(a, b, trunk, stature)),
      ...part('shoulder', 'head_top', (a, b) => headOf(a, b, stature)),
    ],
    lead: [...leg('knee', 'ankle'), ...leadFoot(points).map((each) => outline(each, to))],
    arm: armOf(points, stature).map((each) => outline(each, to)),
  };
}

// Arms that hold a bar on the trunk point sideways, out of the picture, and look short: then elbow down, hand at the bar.
function armOf({ shoulder, elbow, wrist, grip, hip }: Points, stature: number): Vector[][] {
  if (!shoulder || !elbow || !wrist || !grip) return [];
  const draw = (a: Vector, b: Vector, stations: Station[]) => hanging(a, b, stations, stature);
  if (!hip || long(less(elbow, shoulder)) > 0.1 * stature) return [draw(shoulder, elbow, upperArm), draw(elbow, wrist, forearm), draw(wrist, grip, hand)];
  const down = unit(less(hip, shoulder));
  const low = add(add(shoulder, times(0.12 * stature, down)), times(-0.045 * stature, left(down)));
  const palm = add(grip, times(0.012 * stature, unit(less(low, grip))));
  return [draw(shoulder, low, upperArm), draw(low, palm, forearm)];
}

function leadFoot({ heel, toe, ankle }: Points): Vector[][] {
  if (!heel || !toe || !ankle) return [];
  const along = unit(less(toe, heel));
  const over = less(ankle, heel);
  return [footOf(ankle, along, long(less(toe, heel)), over[0] * left(along)[0] + over[1] * left(along)[1])];
}

// Of the rear foot its ankle is given and where it rests: the toe, the laces on a pad, or the ball of the foot on the floor.
function rearFoot(points: Points, stature: number): Vector[][] {
  const ankle = points['rear_ankle'];
  const [toe, hold] = [points['rear_toe'], points['rear_hold']];
  const rests = hold ?? toe;
  if (!ankle || !rests) return [];
  const [length, high] = [0.152 * stature, 0.039 * stature];
  const onLaces = hold && hold[1] > ankle[1] - 0.3 * high;
  const [x, y] = unit(less(rests, ankle));
  // From the line between ankle and rest up to the sole's direction.
  const slope = onLaces ? Math.atan2(0.34 * high, 0.4 * length) : Math.atan2(high, (hold ? 0.5 : 0.75) * length);
  const along: Vector = [x * Math.cos(slope) - y * Math.sin(slope), x * Math.sin(slope) + y * Math.cos(slope)];
  const drawn = footOf(ankle, along, length, high);
  return [onLaces ? drawn : drawn.map(([a, b]): Vector => [a, Math.max(b, rests[1])])]; // toes bend on the floor
}
