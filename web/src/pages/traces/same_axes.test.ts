import { describe, expect, it } from 'vitest';
import { buildPyramid } from '../../charts/trace_pyramid';
import { metricLines, sharedAxes, zeroOf, type DrawnTrial } from './same_axes';

const trial = (takeOff: number, most: number, more: Partial<DrawnTrial> = {}): DrawnTrial => ({
  lines: [{ name: 'force', style: 'main', pyramid: buildPyramid(Float32Array.of(0, most)) }],
  rate_hz: 1000, seconds: 10,
  events: [
    { event: 'quiet_from', name: 'Weighing from', used_s: 0 },
    { event: 'onset', name: 'Start', used_s: takeOff - 1 },
    { event: 'take_off', name: 'Take-off', used_s: takeOff },
    { event: 'landing', name: 'Landing', used_s: takeOff + 0.5 },
  ],
  ...more,
});

describe('trials on the same axes', () => {
  const axes = sharedAxes([trial(3, 1000), trial(5, 2000)]);
  it('lie upon the take-off, the same seconds around it', () => {
    expect(axes.on).toBe('Take-off');
    // from start to landing 1.5 s, and 0.2 s (more than 12 % of 1.5 s) to both sides
    expect(axes.span.from).toBeCloseTo(-1.2, 9);
    expect(axes.span.to).toBeCloseTo(0.7, 9);
  });
  it('reach to the highest force of all', () => expect(axes.scale).toEqual([0, 2080])); // 2000 and 4 % of room
  it('leave a refused trial in, from its first sample', () => {
    const refused = trial(0, 500, { events: [] });
    const mixed = sharedAxes([trial(3, 1000), refused]);
    expect(mixed.key).toBe('take_off');
    expect(zeroOf(refused, mixed.key)).toBe(0);
    expect(sharedAxes([refused])).toMatchObject({ key: '', on: '', span: { from: 0, to: 10 } });
  });
});

it('sets the numbers of the trials in lines, with a gap where a trial has none', () => {
  const lines = metricLines(
    [{ metrics: [{ metric: 'a', name: 'A', value: 1 }] }, { metrics: [{ metric: 'b', name: 'B', value: 2 }, { metric: 'a', name: 'A', value: 3 }] }],
    [{ metric: 'a', mean: 2 }],
  );
  expect(lines.map((line) => [line.name, line.values.map((each) => each?.value), line.spread?.mean])).toEqual([
    ['A', [1, 3], 2],
    ['B', [undefined, 2], undefined],
  ]);
});
