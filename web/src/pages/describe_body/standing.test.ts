import { expect, test } from 'vitest';
import { nameOfRow, standing } from './standing';

// Lengths typed by hand, in cm.
const parts = [
  { row: 'Foot', length: 25, centre: 11 }, { row: 'Shank2', length: 43, centre: 19 }, { row: 'Thigh', length: 42, centre: 17 }, { row: 'Trunk3', length: 51, centre: 22 },
  { row: 'UpperArm', length: 28, centre: 16 }, { row: 'Forearm', length: 27, centre: 12 }, { row: 'Hand', length: 8, centre: 6 }, { row: 'Head2', length: 24, centre: 12 },
];

test('the joints stand one above the other, and each centre lies on its part, from the end named first', () => {
  const { points, centres } = standing(parts, 7, 180, (value) => value / 100);
  expect(points['ankle']).toEqual([0, 0.07]);
  expect(points['knee']![1]).toBeCloseTo(0.5, 9);
  expect(points['hip']![1]).toBeCloseTo(0.92, 9);
  expect(points['shoulder']![1]).toBeCloseTo(1.43, 9);
  expect(points['head_top']).toEqual([0, 1.8]);
  expect(points['toe']![0] - points['heel']![0]).toBeCloseTo(0.25, 9);
  expect(centres.thigh![1]).toBeCloseTo(0.92 - 0.17, 9);
  expect(centres.shank![1]).toBeCloseTo(0.5 - 0.19, 9);
  expect(centres.trunk![1]).toBeCloseTo(1.43 - 0.22, 9);
  expect(centres.head![1]).toBeCloseTo(1.8 - 0.12, 9);
});

test('both tables’ rows are known, and a row of neither is left out', () => {
  for (const row of ['Foot', 'Shank2', 'Leg', 'Thigh', 'Trunk3', 'TrunkHeadNeck', 'UpperArm', 'Forearm', 'Hand', 'Head2']) expect(nameOfRow(row), row).toBeDefined();
  expect(nameOfRow('Wing')).toBeUndefined();
});
