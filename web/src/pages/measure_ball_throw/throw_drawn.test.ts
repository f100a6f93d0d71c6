import { expect, test } from 'vitest';
import { throwDrawn } from './throw_drawn';

const forces = [{ force: 'base', x: 0, y: 0, force_x: 0, force_y: 700 }];
const upper = [{ point: 'hip', x: 0, y: 0.45 }, { point: 'shoulder', x: 0, y: 0.95 }, { point: 'elbow', x: 0.1, y: 1.2 }, { point: 'wrist', x: 0.2, y: 1.4 }, { point: 'ball', x: 0.25, y: 1.5 }];

test('who kneels has the shin laid behind on the floor, who stands a foot under the ankle, and both hold the ball', () => {
  const kneeling = throwDrawn({ points: [{ point: 'knee', x: 0, y: 0 }, ...upper], forces, scale_moment: 100 }, 1.8);
  const at = (drawn: typeof kneeling, name: string) => drawn.points.find((each) => each.point === name)!;
  expect(at(kneeling, 'ankle').x).toBeLessThan(-0.3);
  expect(at(kneeling, 'toe').x).toBeLessThan(at(kneeling, 'heel').x);
  expect(at(kneeling, 'load')).toMatchObject({ x: 0.25, y: 1.5 });
  expect(kneeling.floor_y).toBeLessThan(0);
  const standing = throwDrawn({ points: [{ point: 'ankle', x: 0, y: 0.07 }, { point: 'knee', x: 0, y: 0.5 }, ...upper], forces, scale_moment: 100 }, 1.8);
  expect(at(standing, 'toe').x).toBeGreaterThan(at(standing, 'heel').x);
  expect(standing.floor_y).toBeCloseTo(0.07 - 0.039 * 1.8, 9);
});
