// The points of a throw, with what the figure needs beside them: the ball as the load, a hand that reaches it, a foot under
// the ankle, and of who kneels the shin and foot laid behind on the floor (drawn only; they take no part in the numbers).
import { add, less, times, type DrawnForce, type DrawnPoint, type DrawnSetup, type Vector } from '../../charts/figure_drawn';

export const ballRadius = 0.09; // m, as drawn

export function throwDrawn(drawing: { points: DrawnPoint[]; forces: DrawnForce[]; scale_moment: number }, stature: number): DrawnSetup {
  const at = (name: string): Vector | undefined => {
    const found = drawing.points.find((each) => each.point === name);
    return found && [found.x, found.y];
  };
  const more: [string, Vector][] = [];
  const [ball, wrist, knee] = [at('ball'), at('wrist'), at('knee')];
  if (ball) more.push(['load', ball]);
  if (ball && wrist) more.push(['grip', add(wrist, times(0.8, less(ball, wrist)))]);
  const [long, high] = [0.152 * stature, 0.039 * stature];
  const standing = at('ankle');
  const ankle = standing ?? (knee && add(knee, [-0.246 * stature, 0]));
  if (ankle && standing) more.push(['heel', add(ankle, [-0.25 * long, -high])], ['toe', add(ankle, [0.75 * long, -high])]);
  else if (ankle) more.push(['ankle', ankle], ['heel', add(ankle, [0.25 * long, high])], ['toe', add(ankle, [-0.75 * long, high])]);
  const points = [...drawing.points.filter((each) => each.point !== 'ball'), ...more.map(([point, [x, y]]) => ({ point, x, y }))];
  const lowest = Math.min(...points.map((each) => each.y), ...(standing ? [] : [(knee?.[1] ?? 0) - 0.028 * stature]));
  return { points, forces: drawing.forces, foot_low: 0, foot_high: 0, pressure_x: 0, pressure_error: 0, balance_x: 0, floor_y: lowest, disc_radius: ballRadius, scale_moment: drawing.scale_moment };
}
