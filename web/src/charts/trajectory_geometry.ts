// Where the line, the 80 % band and the test dots of one trajectory lie on the paper. Drawing only: no number is estimated.
import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { dayNumber, monthTicks } from './days';
import type { CurvePoint, MeasuredTest } from './measured';
import { markOf, type Mark } from './measured';

export interface Paper {
  width: number;
  height: number;
  left: number; // room for the numbers of the axis
  right: number;
  top: number;
  bottom: number; // room for the months
}

export interface Dot {
  x: number;
  y: number;
  mark: Mark;
  test: MeasuredTest;
}

export interface Tick {
  at: number;
  text: string;
}

export interface TrajectoryDrawing {
  line: string;
  band: string;
  dots: Dot[];
  now: { x: number; y: number; low: number; high: number } | null; // the last point of the curve
  levels: Tick[];
  months: Tick[];
}

export type Days = [number, number]; // first and last

export function daysOf(points: { date: string }[]): Days | undefined {
  const [from, to] = extent(points, (point) => dayNumber(point.date));
  return from === undefined ? undefined : [from, to];
}

// `shared` is the axis of several charts; without it the chart's own days fill the paper.
export function drawTrajectory(
  curve: CurvePoint[], tests: MeasuredTest[], paper: Paper, decimals: number, shared?: Days,
): TrajectoryDrawing {
  const days = daysOf([...curve, ...tests]);
  if (!days) return { line: '', band: '', dots: [], now: null, levels: [], months: [] };
  const [from, to] = spread(shared ?? days, 1);
  const [low, high] = spread(extent([...curve.flatMap((p) => [p.low, p.high]), ...tests.map((t) => t.value)]), 0.5);
  const x = scaleLinear([from, to], [paper.left, paper.width - paper.right]);
  const y = scaleLinear([low, high], [paper.height - paper.bottom, paper.top + (paper.height - paper.top) * 0.04]);
  const at = (point: { date: string }) => x(dayNumber(point.date));
  const last = curve.at(-1);
  return {
    line: line<CurvePoint>(at, (p) => y(p.value))(curve) ?? '',
    band: area<CurvePoint>(at, (p) => y(p.low), (p) => y(p.high))(curve) ?? '',
    dots: tests.map((test) => ({ x: at(test), y: y(test.value), mark: markOf(test), test })),
    now: last ? { x: at(last), y: y(last.value), low: y(last.low), high: y(last.high) } : null,
    levels: levelTicks(y, decimals),
    months: monthTicks(from, to, paper.width > 520 ? 7 : 4).map((tick) => ({ at: x(tick.day), text: tick.text })),
  };
}

// A range of no length (one test, one value) is opened by `room` to both sides, so that a dot stands in the middle.
function spread(range: [number | undefined, number | undefined] | number[], room: number): [number, number] {
  const [from = 0, to = from] = range;
  return from === to ? [from - room, to + room] : [from, to];
}

// Three to five levels of the axis: the coarsest round steps that give three, every second one when they are many.
function levelTicks(y: ReturnType<typeof scaleLinear<number, number>>, decimals: number): Tick[] {
  const fitting = [3, 4, 5, 6, 8].map((count) => y.ticks(count)).find((ticks) => ticks.length >= 3) ?? y.ticks(3);
  const values = fitting.length > 5 ? fitting.filter((_, i) => i % 2 === 0) : fitting;
  const step = (values[1] ?? 1) - (values[0] ?? 0);
  const places = step >= 1 ? 0 : Math.max(decimals, Math.ceil(-Math.log10(step)));
  return values.map((value) => ({ at: y(value), text: value.toFixed(places).replace('-', '\u2212') }));
}
