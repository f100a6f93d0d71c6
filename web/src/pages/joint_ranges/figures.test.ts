import { expect, test } from 'vitest';
import { jointRangesWords } from '../../words/joint_ranges';
import { along, figures, movement, type Point } from './figures';

// The angles of data/test_kinds.csv; tests/browser/ranges.mjs asks the program for the same list.
const battery = ['hip_external_rotation', 'hip_internal_rotation', 'shoulder_external_rotation', 'shoulder_flexion', 'shoulder_internal_rotation'];

test('every angle of the battery has its figure and its words, and no figure stands for none', () => {
  expect(Object.keys(figures).sort()).toEqual(battery);
  expect(Object.keys(jointRangesWords.figures).sort()).toEqual(battery);
});

const inside = ([x, y]: Point) => x > 4 && x < 296 && y > 4 && y < 186;

test('the moving segment lies inside the picture before and after, and does not cross the head', () => {
  for (const [name, figure] of Object.entries(figures)) {
    for (const angle of [figure.from, figure.to]) expect(inside(along(figure, angle, figure.length)), name).toBe(true);
    for (let share = 0; share <= 1; share += 0.05) {
      const [x, y] = along(figure, figure.to, share * figure.length);
      expect(Math.hypot(x - figure.head[0], y - figure.head[1]), name).toBeGreaterThan(14);
    }
  }
});

// Lying with the head at the left, outward rotation goes from straight up toward the head and inward toward the feet.
// Sitting, seen from the front with the left leg at the right: in inward rotation the foot goes away from the other leg.
test('each movement goes the way its name says', () => {
  const end = (name: string) => along(figures[name]!, figures[name]!.to, figures[name]!.length);
  const x = (name: string) => end(name)[0] - figures[name]!.axis[0];
  expect(x('shoulder_external_rotation')).toBeLessThan(-20);
  expect(x('shoulder_internal_rotation')).toBeGreaterThan(20);
  expect(x('shoulder_flexion')).toBeLessThan(-20);
  expect(end('shoulder_flexion')[1]).toBeLessThan(figures['shoulder_flexion']!.axis[1]);
  expect(x('hip_internal_rotation')).toBeGreaterThan(20);
  expect(x('hip_external_rotation')).toBeLessThan(-20);
});

test('the arrow ends just short of the segment, on its own arc', () => {
  for (const figure of Object.values(figures)) {
    const [[x, y]] = movement(figure).head;
    expect(Math.hypot(x - figure.axis[0], y - figure.axis[1])).toBeCloseTo(figure.length * figure.arc, 6);
  }
});
