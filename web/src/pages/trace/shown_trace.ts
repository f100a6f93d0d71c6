// The parts of an answer that the pages of force traces share.
import type { Answer } from '../../api/ask';
import { fixed } from '../../quantities/shown';

export type ShownTrace = Answer<'/api/trace', 'get'>['measured'];
export type Metric = ShownTrace['metrics'][number];

export const valueOf = (metric: Metric) => `${fixed(metric.value, metric.decimals)} ${metric.unit}`;

// What the number was before an event was moved, as text to stand beside it; nothing when there is nothing to compare.
export function valueBefore(metric: Metric, before: Metric[] | undefined): { text: string; same: boolean } | null {
  const old = before?.find((each) => each.metric === metric.metric);
  if (!old) return null;
  return { text: valueOf(old), same: valueOf(old) === valueOf(metric) };
}

export const secondsText = (seconds: number, rate: number) => fixed(seconds, rate > 1000 ? 4 : 3);
