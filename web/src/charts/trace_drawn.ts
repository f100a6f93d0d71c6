// What the paper of a trace needs: the server's answer, and its samples read once.
import { traceWords as words } from '../words/trace';
import type { TraceLine } from './trace_paint';
import { buildPyramid } from './trace_pyramid';
import { bothPlates, readSamples } from './trace_samples';

export interface DrawnEvent {
  event: string;
  name: string;
  automatic_s: number;
  used_s: number;
  movable: boolean;
}

export interface TraceDrawn {
  lines: TraceLine[];
  rate_hz: number;
  samples: number;
  seconds: number;
  effort_name: string;
  body_weight_n: number;
  body_weight_error_n: number;
  events: DrawnEvent[];
  phases: { phase: string; name: string; from_s: number; to_s: number }[];
}

// One plate is one line. Two are three: the left foot, the right foot, and both together, drawn last.
export function linesOf(plates: { name: string; side: string; samples: string }[]): TraceLine[] {
  const read = plates.filter((plate) => plate.samples !== '').map((plate) => ({ plate, samples: readSamples(plate.samples) }));
  const [one, other] = read;
  if (!one) return [];
  if (!other) return [{ name: words.sides[one.plate.side] ?? (one.plate.name || words.plate), style: 'main', pyramid: buildPyramid(one.samples) }];
  const styleOf = (side: string, otherwise: 'left' | 'right') => (side === 'left' || side === 'right' ? side : otherwise);
  return [
    ...([[one, 'left'], [other, 'right']] as const).map(([{ plate, samples }, otherwise]) => ({
      name: words.sides[plate.side] ?? plate.name, style: styleOf(plate.side, otherwise), pyramid: buildPyramid(samples),
    })),
    { name: words.total, style: 'main' as const, pyramid: buildPyramid(bothPlates(one.samples, other.samples)) },
  ];
}
