// Which part of a trace is on the paper, and how a hand moves it. Drawing only: seconds to pixels and back.
export interface Span {
  from: number; // seconds from the first sample
  to: number;
}

export interface Flag {
  key: string;
  at: number; // where its pole stands, in pixels
  width: number;
}

export interface PlacedFlag {
  key: string;
  at: number;
  left: number;
  lane: number; // 0 is nearest to the curve; -1 when there is no room
}

const fewestSamples = 20;

// Inside the whole trace, and never closer than twenty samples.
export function clamped(span: Span, whole: number, rate: number): Span {
  const length = Math.min(whole, Math.max(span.to - span.from, fewestSamples / rate));
  const from = Math.min(Math.max(0, span.from), whole - length);
  return { from, to: from + length };
}

// The second under the hand stays where it is.
export function zoomed(span: Span, factor: number, around: number, whole: number, rate: number): Span {
  const length = Math.min(whole, Math.max((span.to - span.from) * factor, fewestSamples / rate));
  const share = (around - span.from) / (span.to - span.from);
  const from = around - share * length;
  return clamped({ from, to: from + length }, whole, rate);
}

export function shifted(span: Span, seconds: number, whole: number, rate: number): Span {
  return clamped({ from: span.from + seconds, to: span.to + seconds }, whole, rate);
}

// Two fingers: the seconds that lay under them when they came down lie under them still.
export function pinched(start: Span, was: [number, number], now: [number, number], width: number, whole: number, rate: number): Span {
  const perPixel = (start.to - start.from) / width;
  const apart = Math.max(8, Math.abs(now[1] - now[0]));
  const scale = (perPixel * Math.max(8, Math.abs(was[1] - was[0]))) / apart;
  const middle = start.from + ((was[0] + was[1]) / 2) * perPixel;
  const from = middle - ((now[0] + now[1]) / 2) * scale;
  return clamped({ from, to: from + scale * width }, whole, rate);
}

// The part with the effort: from the first event to the last, with a little room. The quiet standing before it is left
// out, for it is long and flat.
export function effortSpan(events: { event: string; used_s: number }[], whole: number, rate: number): Span {
  const moving = events.filter((event) => !event.event.startsWith('quiet'));
  const times = (moving.length ? moving : events).map((event) => event.used_s);
  if (!times.length) return { from: 0, to: whole };
  const from = Math.min(...times);
  const to = Math.max(...times);
  const room = Math.max(0.2, 0.12 * (to - from));
  return clamped({ from: from - room, to: to + room }, whole, rate);
}

export function nearestSample(seconds: number, rate: number, samples: number): number {
  return Math.min(Math.max(0, Math.round(seconds * rate)), samples - 1) / rate;
}

// Flags stand to the right of their poles, each one lane above the flags it would cover, so that no pole runs through
// another's name.
export function placeFlags(flags: Flag[], width: number, lanes: number): PlacedFlag[] {
  const placed: (PlacedFlag & { right: number })[] = [];
  for (const flag of [...flags].sort((a, b) => b.at - a.at)) {
    const left = Math.max(0, Math.min(flag.at, width - flag.width));
    const right = left + flag.width + 2;
    const covered = placed.filter((other) => other.lane >= 0 && other.left < right && left < other.right).map((other) => other.lane);
    const lane = covered.length ? Math.max(...covered) + 1 : 0;
    placed.push({ key: flag.key, at: flag.at, left, right, lane: lane < lanes ? lane : -1 });
  }
  return placed.reverse().map(({ key, at, left, lane }) => ({ key, at, left, lane }));
}
