// Shares on one strip: nothing to all of it. The heading says "%".
import type { IntervalScale } from './interval_geometry';

export const percentScale: IntervalScale = {
  domain: [0, 100],
  ticks: [0, 25, 50, 75, 100].map((value) => ({ value, text: String(value) })),
};
