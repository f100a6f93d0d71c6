import { describe, expect, it } from 'vitest';
import { across, intervalScale } from './interval_geometry';
import { chartWords, markOf, type MeasuredTest } from './measured';
import { drawSpark, sharedScales } from './spark_geometry';
import { daysOf, drawTrajectory } from './trajectory_geometry';

const paper = { width: 400, height: 200, left: 40, right: 10, top: 10, bottom: 20 };
const test = (date: string, value: number, more: Partial<MeasuredTest> = {}): MeasuredTest => ({
  date, value, standard_error: 1, side: 'none', method: '', warnings: [], far_from_expected: false, from_logged_set: false, left_out: '', ...more,
});
const outside = 'read by another device or place than usual for this athlete; shown, not mixed in.';
const curve = [
  { date: '2025-01-01', value: 80, low: 78, high: 82 },
  { date: '2025-12-31', value: 84, low: 80, high: 88 },
];
const tests = [test('2025-01-01', 79), test('2025-07-02', 83)];

describe('a trajectory', () => {
  const drawing = drawTrajectory(curve, tests, paper, 1);
  it('runs from the left edge to the right edge of the paper', () => {
    expect(drawing.dots[0]?.x).toBe(40);
    expect(drawing.now?.x).toBe(390);
    expect(drawing.dots[1]?.x).toBe(40 + 350 / 2); // 2 July is the middle day of 365
  });
  it('puts more speed higher, and the band around the line', () => {
    expect(drawing.dots[1]!.y).toBeLessThan(drawing.dots[0]!.y);
    const now = drawing.now!;
    expect(now.high).toBeLessThan(now.y);
    expect(now.low).toBeGreaterThan(now.y);
    expect(now.low - now.y).toBeCloseTo(now.y - now.high, 9); // 80, 84, 88: the same distance to both sides
  });
  it('has three to five levels, all on the paper and all different', () => {
    const texts = drawing.levels.map((tick) => tick.text);
    expect(texts.length).toBeGreaterThanOrEqual(3);
    expect(texts.length).toBeLessThanOrEqual(5);
    expect(new Set(texts).size).toBe(texts.length);
    for (const tick of drawing.levels) expect(tick.at >= 10 && tick.at <= 180).toBe(true);
  });
  it('shares its days with others: the same day at the same place, whatever each has', () => {
    const shared = daysOf([...curve, ...tests]);
    const later = drawTrajectory([], [test('2025-07-02', 5)], paper, 1, shared);
    expect(later.dots[0]?.x).toBe(drawing.dots[1]?.x);
    expect(later.months).toEqual(drawing.months);
    expect(daysOf([])).toBeUndefined();
  });
  it('draws a single test in the middle and nothing at all without data', () => {
    const one = drawTrajectory([], [test('2025-01-01', 79)], paper, 1);
    expect(one.dots[0]).toMatchObject({ x: 215, y: (180 + 17.6) / 2 });
    expect(drawTrajectory([], [], paper, 1)).toEqual({ line: '', band: '', dots: [], now: null, levels: [], months: [] });
  });
});

describe('marks of tests', () => {
  it('are four, and being left out of the line is said first', () => {
    expect(markOf(test('2025-01-01', 1))).toBe('test');
    expect(markOf(test('2025-01-01', 1, { from_logged_set: true }))).toBe('logged_set');
    expect(markOf(test('2025-01-01', 1, { far_from_expected: true }))).toBe('far');
    expect(markOf(test('2025-01-01', 1, { far_from_expected: true, left_out: outside }))).toBe('left_out');
    expect(markOf(test('2025-01-01', 1, { warnings: ['The trials lie further apart than is usual.'] }))).toBe('test');
  });
});

describe('the chart in words', () => {
  const now = { value: 81.94, low: 80.7, high: 83.06, unit: 'mph', decimals: 1 };
  it('counts, dates and gives the interval', () => {
    expect(chartWords('Throwing velocity', tests, now)).toBe(
      'Throwing velocity: 2 tests from 1 Jan 2025 to 2 Jul 2025; now 81.9 mph (80 %: 80.7 to 83.1).',
    );
  });
  it('tells sets, far ones and left-out ones', () => {
    const all = [test('2025-03-01', 1), test('2025-02-01', 1, { from_logged_set: true }), test('2025-01-01', 1, { left_out: outside })];
    expect(chartWords('Jump', all, null)).toBe('Jump: 2 tests and 1 logged set from 1 Jan 2025 to 1 Mar 2025; 1 left out of the line.');
  });
  it('says when there is nothing', () => expect(chartWords('Jump', [], null)).toBe('Jump: no tests yet.'));
});

describe('sparklines of a list', () => {
  const slow = curve.map((point) => ({ ...point, value: point.value - 30, low: point.low - 30, high: point.high - 30 }));
  const scales = sharedScales([{ curve, tests }, { curve: slow, tests: [] }]);
  it('share the highest span, 78 to 88', () => expect(scales.span).toBe(10));
  it('leave out what the line leaves out, so that one foreign reading does not flatten all lines', () => {
    const foreign = [...tests, test('2025-03-01', 60, { left_out: outside })];
    expect(sharedScales([{ curve, tests: foreign }]).span).toBe(10);
    expect(drawSpark(curve, foreign, scales, 150, 40).dots).toHaveLength(2);
  });
  it('draw the same shape for the same change at another speed', () => {
    expect(drawSpark(slow, [], scales, 150, 40).line).toBe(drawSpark(curve, [], scales, 150, 40).line);
  });
  it('keep every dot inside', () => {
    for (const dot of drawSpark(curve, tests, scales, 150, 40).dots) {
      expect(dot.x).toBeGreaterThanOrEqual(4);
      expect(dot.x).toBeLessThanOrEqual(146);
    }
  });
  it('draw nothing without data', () => expect(drawSpark([], [], sharedScales([]), 150, 40)).toEqual({ line: '', band: '', dots: [] }));
});

describe('intervals', () => {
  const scale = intervalScale([{ value: 0.41, low: 0.1, high: 1.17 }, { value: 0.2, low: 0.05, high: 0.5 }]);
  it('always show zero', () => expect(scale.ticks.map((tick) => tick.value)).toContain(0));
  it('reach around the widest', () => expect(scale.domain[1]).toBeGreaterThanOrEqual(1.17));
  it('sign the levels above and below zero', () => {
    const texts = intervalScale([{ value: 0, low: -1, high: 1 }]).ticks.map((tick) => tick.text);
    expect(texts).toEqual(['\u22121.0', '\u22120.5', '0.0', '+0.5', '+1.0']);
  });
  it('keep the ends a point away from the edge', () => {
    expect(across(scale.domain[0], scale.domain, 200)).toBe(6);
    expect(across(scale.domain[1], scale.domain, 200)).toBe(194);
  });
});
