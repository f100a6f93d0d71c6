// The three errors of one part of a test, top to bottom, as they are drawn. Numbers of the answer, unchanged.
import type { Interval, IntervalScale } from '../../charts/interval_geometry';

interface Part {
  published: number;
  own?: Interval | null;
  pooled: Interval;
}

export interface ErrorRow {
  row: 'published' | 'own' | 'pooled';
  drawn: Interval | undefined; // the published one has no interval of its own; there may be no own one
}

export function errorRows(part: Part): ErrorRow[] {
  const point = { value: part.published, low: part.published, high: part.published };
  return [
    { row: 'published', drawn: point },
    { row: 'own', drawn: part.own ?? undefined },
    { row: 'pooled', drawn: part.pooled },
  ];
}

// An error has no direction: its axis begins at zero and its numbers bear no plus.
export function unsigned(scale: IntervalScale): IntervalScale {
  return { ...scale, ticks: scale.ticks.map((tick) => ({ ...tick, text: tick.text.replace('+', '') })) };
}
