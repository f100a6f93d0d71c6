// A line with its band over measured points, on a plain or a log axis; all numbers come from the server.
import { extent } from 'd3-array';
import { scaleLinear, scaleLog } from 'd3-scale';

export interface BandPoint {
  x: number;
  value: number;
  low: number;
  high: number;
}
export interface MeasuredPoint {
  x: number;
  value: number;
  low?: number;
  high?: number;
  single?: number[]; // what the value is the mean of
  hollow?: boolean; // left out of the line, or of advice
  label?: string; // said beside the point
  below?: boolean; // the point lies below the line: its words go further down, away from it
}
export interface Frame {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

// Everything that must lie inside the frame.
export interface Drawn {
  points: MeasuredPoint[];
  curve: BandPoint[];
  levels: number[]; // of y
  reach: number[]; // of x
}

export interface LineBandScales {
  x: (value: number) => number;
  y: (value: number) => number;
  ticksX: number[];
  ticksY: number[];
}

export function lineBandScales(drawn: Drawn, frame: Frame, logX: boolean): LineBandScales {
  const { points, curve } = drawn;
  const xs = [...points, ...curve].map((each) => each.x).concat(drawn.reach);
  const ys = [
    ...points.flatMap((each) => [each.value, each.low ?? each.value, each.high ?? each.value, ...(each.single ?? [])]),
    ...curve.flatMap((each) => [each.low, each.high]),
    ...drawn.levels,
  ];
  const [x0 = 0, x1 = 1] = extent(xs);
  const [y0 = 0, y1 = 1] = extent(ys);
  const room = (y1 - y0 || 1) * 0.06;
  const y = scaleLinear([y0 - room, y1 + room], [frame.height - frame.bottom, frame.top]).nice(8);
  const range: [number, number] = [frame.left, frame.width - frame.right];
  const side = (x1 - x0 || 1) * 0.05;
  const x = logX ? scaleLog([x0 / 1.08, x1 * 1.08], range) : scaleLinear([x0 - side, x1 + side], range);
  const masses = [...new Set(points.map((each) => each.x))].sort((a, b) => a - b);
  const few = frame.width < 480 ? 4 : 7;
  return { x: (value) => x(value), y: (value) => y(value), ticksX: logX ? masses : x.ticks(few), ticksY: y.ticks(5) };
}

// How far a marked stretch of the axis goes: a little beyond its first and last ball, so that one ball alone shows too.
export function markedStretch(from: number, to: number, x: (value: number) => number, frame: Frame): { from: number; to: number } {
  const inside = (at: number) => Math.min(Math.max(at, frame.left), frame.width - frame.right);
  return { from: inside(x(from) - 12), to: inside(x(to) + 12) };
}

export function bandPath(curve: BandPoint[], scales: LineBandScales): string {
  if (!curve.length) return '';
  const up = curve.map((each) => `${scales.x(each.x)},${scales.y(each.high)}`);
  const down = [...curve].reverse().map((each) => `${scales.x(each.x)},${scales.y(each.low)}`);
  return `M${[...up, ...down].join('L')}Z`;
}

export function linePath(curve: BandPoint[], scales: LineBandScales): string {
  return curve.length ? `M${curve.map((each) => `${scales.x(each.x)},${scales.y(each.value)}`).join('L')}` : '';
}
