// Trials side by side on the same axes: laid upon one event that all of them have, with the same seconds before and
// after it and the same newtons. Drawing only.
import { forceScale, type ForceScale, type TraceLine } from '../../charts/trace_paint';
import { effortSpan, type Span } from '../../charts/trace_view';

export interface DrawnTrial {
  lines: TraceLine[];
  rate_hz: number;
  seconds: number;
  events: { event: string; name: string; used_s: number }[];
}

export interface SharedAxes {
  on: string; // the name of the event at zero; '' when the trials share none and lie from their first samples
  key: string;
  span: Span;
  scale: ForceScale;
}

const laidUpon = ['take_off', 'onset', 'contact', 'landing'];

export function sharedAxes(trials: DrawnTrial[]): SharedAxes {
  const measured = trials.filter((trial) => trial.events.length);
  const first = measured[0];
  const shared = first?.events.map((each) => each.event).filter((key) => measured.every((trial) => trial.events.some((each) => each.event === key))) ?? [];
  const key = laidUpon.find((each) => shared.includes(each)) ?? shared[0] ?? '';
  const spans = trials.map((trial) => {
    const zero = zeroOf(trial, key);
    const own = key ? effortSpan(trial.events, trial.seconds, trial.rate_hz) : { from: 0, to: trial.seconds };
    return { from: own.from - zero, to: own.to - zero };
  });
  const scales = trials.map((trial) => forceScale(trial.lines));
  return {
    on: first?.events.find((each) => each.event === key)?.name ?? '',
    key,
    span: { from: Math.min(...spans.map((each) => each.from)), to: Math.max(...spans.map((each) => each.to)) },
    scale: [Math.min(...scales.map((each) => each[0])), Math.max(...scales.map((each) => each[1]))],
  };
}

export const zeroOf = (trial: DrawnTrial, key: string) => trial.events.find((each) => each.event === key)?.used_s ?? 0;

// One line a metric: the trials' numbers in the order of the trials, and the server's mean and spread.
export interface MetricLine<Metric, Spread> {
  metric: string;
  name: string;
  values: (Metric | undefined)[];
  spread: Spread | undefined;
}
export function metricLines<Metric extends { metric: string; name: string }, Spread extends { metric: string }>(
  trials: { metrics: Metric[] }[], spreads: Spread[],
): MetricLine<Metric, Spread>[] {
  const names = new Map(trials.flatMap((trial) => trial.metrics.map((each) => [each.metric, each.name] as const)));
  return [...names].map(([metric, name]) => ({
    metric, name,
    values: trials.map((trial) => trial.metrics.find((each) => each.metric === metric)),
    spread: spreads.find((each) => each.metric === metric),
  }));
}
