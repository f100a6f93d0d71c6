import { expect, it } from 'vitest';
import { drawHeights } from './height_geometry';

const paper = { width: 300, height: 120, left: 40, right: 10, top: 10, bottom: 24 };
const height = (date: string, value: number) => ({ date, height: { value, low: value - 0.3, high: value + 0.3, unit: 'in', decimals: 1 } });

it('draws each height with its error, taller higher, and leaves the days to today empty', () => {
  const drawn = drawHeights([height('2026-01-01', 60), height('2026-03-01', 61)], '2026-06-01', paper);
  expect(drawn.bars).toHaveLength(2);
  const [first, second] = drawn.bars;
  expect(first && second && second.y < first.y && second.x > first.x).toBe(true);
  expect(first && first.low > first.y && first.high < first.y).toBe(true);
  // 59 of the 151 days from the first height to today have passed at the second: its place on the axis.
  expect(((second?.x ?? 0) - 44) / (290 - 44)).toBeCloseTo(59 / 151, 6);
});
it('draws nothing without heights', () => expect(drawHeights([], '2026-06-01', paper).bars).toEqual([]));
