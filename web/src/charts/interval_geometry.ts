// Intervals on one shared scale, with zero always in sight.
import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';

export interface Interval {
  value: number;
  low: number;
  high: number;
}

export interface IntervalScale {
  domain: [number, number];
  ticks: { value: number; text: string }[];
}

export function intervalScale(intervals: Interval[]): IntervalScale {
  const [low = 0, high = 1] = extent([0, ...intervals.flatMap((each) => [each.low, each.value, each.high])]);
  const scale = scaleLinear([low, high === low ? low + 1 : high], [0, 1]).nice(4);
  const ticks = scale.ticks(4).map((value) => ({ value, text: tickText(value, scale.tickFormat(4)) }));
  const [from = 0, to = 1] = scale.domain();
  return { domain: [from, to], ticks };
}

function tickText(value: number, format: (value: number) => string): string {
  return value > 0 ? `+${format(value)}` : format(value).replace('-', '\u2212');
}

// Where a value lies across a strip, in user units; `edge` keeps the point whole.
export function across(value: number, domain: [number, number], width: number, edge = 6): number {
  return scaleLinear(domain, [edge, width - edge])(value);
}
