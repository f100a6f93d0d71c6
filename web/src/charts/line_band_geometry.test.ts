import { expect, test } from 'vitest';
import { bandPath, linePath, lineBandScales, markedStretch } from './line_band_geometry';

const frame = { width: 500, height: 300, left: 50, right: 10, top: 10, bottom: 40 };
const points = [{ x: 4, value: 10, low: 9, high: 11, single: [8.5, 11.5] }, { x: 6, value: 8 }, { x: 8, value: 7 }];
const curve = [{ x: 4, value: 10, low: 9.5, high: 10.5 }, { x: 8, value: 7, low: 6, high: 8 }];
const drawn = { points, curve, levels: [5.5], reach: [9.5] };

test('every point, single throw, end of a bar, band, level and reach lies inside the frame', () => {
  for (const log of [true, false]) {
    const scales = lineBandScales(drawn, frame, log);
    for (const x of [4, 6, 8, 9.5]) {
      expect(scales.x(x)).toBeGreaterThanOrEqual(frame.left);
      expect(scales.x(x)).toBeLessThanOrEqual(frame.width - frame.right);
    }
    for (const y of [5.5, 6, 7, 8.5, 9, 11, 11.5]) {
      expect(scales.y(y)).toBeGreaterThanOrEqual(frame.top);
      expect(scales.y(y)).toBeLessThanOrEqual(frame.height - frame.bottom);
    }
    expect(scales.y(11)).toBeLessThan(scales.y(9)); // up is more
  }
});

test('on a log axis equal ratios are equal steps, and the ticks are the masses thrown', () => {
  const balls = [2, 4, 8].map((x) => ({ x, value: 1 }));
  const scales = lineBandScales({ points: balls, curve: [], levels: [], reach: [] }, frame, true);
  expect(scales.x(4) - scales.x(2)).toBeCloseTo(scales.x(8) - scales.x(4), 6);
  expect(scales.ticksX).toEqual([2, 4, 8]);
});

test('one ball alone in the marked stretch still shows, and no stretch leaves the frame', () => {
  const x = (value: number) => 50 + 110 * (value - 4);
  const one = markedStretch(6, 6, x, frame);
  expect(one.to - one.from).toBeGreaterThan(10);
  expect(markedStretch(4, 8, x, frame)).toEqual({ from: 50, to: 490 });
});

test('the band goes out along its upper edge and back along its lower one', () => {
  const scales = { x: (v: number) => v, y: (v: number) => v, ticksX: [], ticksY: [] };
  expect(bandPath(curve, scales)).toBe('M4,10.5L8,8L8,6L4,9.5Z');
  expect(linePath(curve, scales)).toBe('M4,10L8,7');
  expect(bandPath([], scales)).toBe('');
});
