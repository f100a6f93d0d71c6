// Where heights and their error bars lie on the paper. Drawing only: no number is estimated, and no line joins them.
import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import type { Shown } from '../quantities/shown';
import { dayNumber, monthTicks } from './days';
import type { Paper, Tick } from './trajectory_geometry';

export interface MeasuredHeight {
  date: string;
  height: Shown;
}

export interface HeightsDrawn {
  bars: { x: number; y: number; low: number; high: number }[];
  levels: Tick[];
  months: Tick[];
}

// The axis runs from the first height to `today`, so that days without a height are seen.
export function drawHeights(heights: MeasuredHeight[], today: string, paper: Paper): HeightsDrawn {
  const [low, high] = extent(heights.flatMap(({ height }) => [height.low, height.high]));
  if (low === undefined) return { bars: [], levels: [], months: [] };
  const [first = 0] = extent(heights, ({ date }) => dayNumber(date));
  const last = Math.max(dayNumber(today), first + 30);
  const x = scaleLinear([first, last], [paper.left + 4, paper.width - paper.right]);
  const y = scaleLinear([low, Math.max(high, low + 1)], [paper.height - paper.bottom - 2, paper.top]);
  return {
    bars: heights.map(({ date, height }) => ({ x: x(dayNumber(date)), y: y(height.value), low: y(height.low), high: y(height.high) })),
    levels: y.ticks(3).map((value, i, all) => ({ at: y(value), text: i === all.length - 1 ? `${value} ${heights[0]?.height.unit ?? ''}` : String(value) })),
    months: monthTicks(first, last, paper.width > 520 ? 7 : 3).map((tick) => ({ at: x(tick.day), text: tick.text })),
  };
}
