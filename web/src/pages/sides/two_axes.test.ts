import { expect, test } from 'vitest';
import { twoAxes } from './two_axes';

const shown = (value: number, unit: string) => ({ value, low: value - 1, high: value + 1, unit, decimals: 1 });

test('a share of both goes on one axis, a difference without one on the other, and none on both', () => {
  const force = { test: 'grip_force', difference: shown(30, 'N'), over_total: shown(3, '%') };
  const angle = { test: 'hip_internal_rotation', difference: shown(-4, 'deg'), over_total: null };
  const axes = twoAxes([force, angle]);
  expect(axes.overTotal).toEqual([{ line: force, shown: force.over_total }]);
  expect(axes.degrees).toEqual([{ line: angle, shown: angle.difference }]);
});
