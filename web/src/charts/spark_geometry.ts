// A small curve with its band, on scales shared by all throwers of the list: same days, same miles per hour for an inch,
// each around its own middle. So slopes and bands can be compared from line to line; heights cannot, and need not.
// Tests that the line leaves out stand on the thrower's own page only: one foreign reading would flatten every line here.
import { extent, max } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { dayNumber } from './days';
import { leftOut, markOf, type CurvePoint, type Mark, type MeasuredTest } from './measured';

export interface SparkScales {
  from: number; // first and last day
  to: number;
  span: number; // height of the chart in the unit of the curves
}

export interface SparkDrawing {
  line: string;
  band: string;
  dots: { x: number; y: number; mark: Mark }[];
}

const edge = 4; // keeps dots whole

export function sharedScales(lines: { curve: CurvePoint[]; tests: MeasuredTest[] }[]): SparkScales {
  const [from = 0, to = 0] = extent(lines.flatMap((each) => [...each.curve, ...each.tests.filter(inLine)]), (point) => dayNumber(point.date));
  const span = max(lines, ({ curve, tests }) => {
    const [low = 0, high = 0] = reach(curve, tests);
    return high - low;
  });
  return { from, to: to > from ? to : from + 1, span: span || 1 };
}

export function drawSpark(curve: CurvePoint[], tests: MeasuredTest[], scales: SparkScales, width: number, height: number): SparkDrawing {
  const [low = 0, high = 0] = reach(curve, tests);
  const middle = (low + high) / 2;
  const x = scaleLinear([scales.from, scales.to], [edge, width - edge]);
  const y = scaleLinear([middle - scales.span / 2, middle + scales.span / 2], [height - edge, edge]);
  const at = (point: { date: string }) => x(dayNumber(point.date));
  return {
    line: line<CurvePoint>(at, (p) => y(p.value))(curve) ?? '',
    band: area<CurvePoint>(at, (p) => y(p.low), (p) => y(p.high))(curve) ?? '',
    dots: tests.filter(inLine).map((test) => ({ x: at(test), y: y(test.value), mark: markOf(test) })),
  };
}

function inLine(test: MeasuredTest): boolean {
  return !leftOut(test);
}

function reach(curve: CurvePoint[], tests: MeasuredTest[]): [number, number] | [undefined, undefined] {
  return extent([...curve.flatMap((p) => [p.low, p.high]), ...tests.filter(inLine).map((t) => t.value)]);
}
