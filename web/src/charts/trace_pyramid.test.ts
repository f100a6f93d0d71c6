import { describe, expect, it } from 'vitest';
import { buildPyramid, reachOf } from './trace_pyramid';

// A crooked row of numbers, the same on every run (Lehmer's generator, 48271 modulo 2^31 - 1).
function crooked(length: number, seed = 7): Float32Array {
  const row = new Float32Array(length);
  let state = seed;
  for (let i = 0; i < length; i += 1) {
    state = (state * 48271) % 2147483647;
    row[i] = state / 1e6 - 1000;
  }
  return row;
}
// Read sample by sample: what the pyramid has to agree with.
function oneByOne(row: Float32Array, from: number, to: number) {
  const part = [...row.slice(Math.max(0, from), Math.max(0, to))];
  return { low: Math.min(...part), high: Math.max(...part) };
}

describe('the least and the most of a stretch', () => {
  for (const length of [0, 1, 2, 7, 8, 9, 63, 64, 65, 513])
    it(`are those read one by one, for every stretch of ${length} samples`, () => {
      const row = crooked(length);
      const pyramid = buildPyramid(row);
      const step = length > 100 ? 5 : 1;
      for (let from = 0; from <= length; from += step)
        for (let to = from; to <= length; to += step) expect(reachOf(pyramid, from, to)).toEqual(oneByOne(row, from, to));
    });
  it('are exact in a trace of 120,000 samples, also at its ends', () => {
    const row = crooked(120_000);
    const pyramid = buildPyramid(row);
    const places = crooked(400, 11).map((x) => Math.abs(Math.round(x * 97)) % 120_001);
    for (let i = 0; i + 1 < places.length; i += 2) {
      const [from, to] = [places[i]!, places[i + 1]!].sort((a, b) => a - b) as [number, number];
      expect(reachOf(pyramid, from, to)).toEqual(oneByOne(row, from, to));
    }
    expect(reachOf(pyramid, -50, 200_000)).toEqual(oneByOne(row, 0, 120_000));
  });
  it('find one lonely peak wherever it stands', () => {
    for (const place of [0, 7, 8, 511, 4096, 9_999]) {
      const row = new Float32Array(10_000);
      row[place] = 5;
      const pyramid = buildPyramid(row);
      expect(reachOf(pyramid, 0, 10_000)).toEqual({ low: 0, high: 5 });
      expect(reachOf(pyramid, place + 1, 10_000).high).toBe(place === 9_999 ? -Infinity : 0);
    }
  });
});

it('keeps little: all levels together hold under a third of the samples, twice', () => {
  const held = buildPyramid(crooked(100_000)).levels.reduce((sum, level) => sum + level.low.length, 0);
  expect(held).toBeLessThan(100_000 / 3);
});
