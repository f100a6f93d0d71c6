// Tests whose difference is said in per cent of both sides share one axis; angles have no zero to divide by and share
// another, in degrees.
import type { Shown } from '../../quantities/shown';

export interface Drawn<Line> {
  line: Line;
  shown: Shown;
}

export function twoAxes<Line extends { difference: Shown; over_total?: Shown | null }>(tests: Line[]): { overTotal: Drawn<Line>[]; degrees: Drawn<Line>[] } {
  return {
    overTotal: tests.flatMap((line) => (line.over_total ? [{ line, shown: line.over_total }] : [])),
    degrees: tests.flatMap((line) => (line.over_total ? [] : [{ line, shown: line.difference }])),
  };
}
