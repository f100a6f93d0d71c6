// Draws a stretch of a force trace on a canvas: one column a device pixel, never more, however long the trace.
import { ticks } from 'd3-array';
import { reachOf, type Pyramid } from './trace_pyramid';
import type { Span } from './trace_view';

export interface TraceLine {
  name: string; // left, right, both together, or as the file names the plate
  style: 'main' | 'left' | 'right';
  pyramid: Pyramid;
}

export interface TraceSheet {
  width: number; // CSS pixels
  height: number;
  left: number; // room for the newtons
  right: number;
  top: number; // room for the names of the phases
  bottom: number; // room for the seconds
}

export interface TraceInk {
  ink: string;
  quiet: string;
  rule: string;
  blue: string;
  ochre: string;
  sheet: string;
  washes: [string, string];
}

export const inkOf = (element: Element): TraceInk => {
  const look = getComputedStyle(element);
  const of = (name: string) => look.getPropertyValue(name).trim();
  return {
    ink: of('--ink'), quiet: of('--quiet'), rule: of('--rule'), blue: of('--blue'), ochre: of('--ochre'), sheet: of('--sheet'),
    washes: [of('--blue-wash'), of('--paper')],
  };
};

export type ForceScale = [number, number];

// From zero, or below it when the trace goes there, to a little above the highest force.
export function forceScale(lines: TraceLine[]): ForceScale {
  let low = 0;
  let high = 1;
  for (const { pyramid } of lines) {
    const reach = reachOf(pyramid, 0, pyramid.samples.length);
    if (reach.low < low) low = reach.low;
    if (reach.high > high) high = reach.high;
  }
  const room = 0.04 * (high - low);
  return [low < 0 ? low - room : low, high + room];
}

export const acrossAt = (seconds: number, span: Span, sheet: TraceSheet) =>
  sheet.left + ((seconds - span.from) / (span.to - span.from)) * (sheet.width - sheet.left - sheet.right);
export const secondsAt = (x: number, span: Span, sheet: TraceSheet) =>
  span.from + ((x - sheet.left) / (sheet.width - sheet.left - sheet.right)) * (span.to - span.from);
export const heightAt = (force: number, scale: ForceScale, sheet: TraceSheet) =>
  sheet.height - sheet.bottom - ((force - scale[0]) / (scale[1] - scale[0])) * (sheet.height - sheet.top - sheet.bottom);

export const lineStyles: Record<TraceLine['style'], { width: number; dash: number[]; colour: 'blue' | 'ochre' }> = {
  main: { width: 1.6, dash: [], colour: 'blue' },
  left: { width: 1.2, dash: [7, 3], colour: 'blue' },
  right: { width: 1.2, dash: [1.5, 3], colour: 'ochre' },
};

export function paintLine(pen: CanvasRenderingContext2D, line: TraceLine, span: Span, scale: ForceScale, sheet: TraceSheet, rate: number, fine: number, ink: TraceInk) {
  const { samples } = line.pyramid;
  const style = lineStyles[line.style];
  pen.strokeStyle = ink[style.colour];
  pen.lineWidth = style.width;
  pen.lineJoin = 'round';
  pen.setLineDash(style.dash);
  pen.beginPath();
  const first = Math.max(0, Math.floor(span.from * rate) - 1);
  const last = Math.min(samples.length - 1, Math.ceil(span.to * rate) + 1);
  const columns = Math.round((sheet.width - sheet.left - sheet.right) * fine);
  if (last - first <= 2 * columns) {
    for (let i = first; i <= last; i += 1) pen.lineTo(acrossAt(i / rate, span, sheet), heightAt(samples[i] as number, scale, sheet));
  } else {
    const perColumn = ((span.to - span.from) * rate) / columns;
    let before = 0;
    for (let column = 0; column < columns; column += 1) {
      const from = Math.floor(span.from * rate + column * perColumn);
      const reach = reachOf(line.pyramid, from, Math.max(from + 1, Math.floor(span.from * rate + (column + 1) * perColumn)));
      if (reach.low > reach.high) continue;
      const x = sheet.left + (column + 0.5) / fine;
      const rising = reach.high - before > before - reach.low;
      pen.lineTo(x, heightAt(rising ? reach.low : reach.high, scale, sheet));
      if (reach.low !== reach.high) pen.lineTo(x, heightAt(rising ? reach.high : reach.low, scale, sheet));
      before = rising ? reach.high : reach.low;
    }
  }
  pen.stroke();
  pen.setLineDash([]);
}

const seconds = (x: number, step: number) => x.toFixed(step >= 1 ? 0 : Math.min(4, Math.ceil(-Math.log10(step) - 1e-9))).replace('-', '\u2212');

export function paintAxes(pen: CanvasRenderingContext2D, span: Span, scale: ForceScale, sheet: TraceSheet, ink: TraceInk, small = false) {
  const floor = sheet.height - sheet.bottom;
  pen.font = `${small ? 12 : 13}px ${getComputedStyle(pen.canvas).fontFamily}`;
  pen.lineWidth = 1;
  pen.strokeStyle = ink.rule;
  pen.fillStyle = ink.quiet;
  pen.textBaseline = 'middle';
  pen.textAlign = 'right';
  for (const force of ticks(scale[0], scale[1], small ? 3 : 5)) {
    const y = Math.round(heightAt(force, scale, sheet)) + 0.5;
    pen.setLineDash([1, 3]);
    segment(pen, sheet.left, y, sheet.width - sheet.right, y);
    pen.fillText(force.toLocaleString('en').replace('-', '\u2212'), sheet.left - 6, y);
  }
  pen.setLineDash([]);
  const times = ticks(span.from, span.to, Math.max(3, Math.floor((sheet.width - sheet.left) / (small ? 70 : 90))));
  const step = (times[1] ?? 1) - (times[0] ?? 0);
  pen.textBaseline = 'alphabetic';
  pen.textAlign = 'center';
  for (const time of times) {
    const x = Math.round(acrossAt(time, span, sheet)) + 0.5;
    segment(pen, x, floor, x, floor + 4);
    if (x > sheet.left + 8 && x < sheet.width - 20) pen.fillText(seconds(time, step), x, floor + 17);
  }
  segment(pen, sheet.left, floor + 0.5, sheet.width - sheet.right, floor + 0.5);
}

export function segment(pen: CanvasRenderingContext2D, x1: number, y1: number, x2: number, y2: number) {
  pen.beginPath();
  pen.moveTo(x1, y1);
  pen.lineTo(x2, y2);
  pen.stroke();
}

export interface PaintedPhase {
  name: string;
  from_s: number;
  to_s: number;
}

// Shaded by turns, and named along the top: number and name where there is room, else the number, else nothing.
export function paintPhases(pen: CanvasRenderingContext2D, phases: PaintedPhase[], span: Span, sheet: TraceSheet, ink: TraceInk) {
  const leftEdge = sheet.left;
  const rightEdge = sheet.width - sheet.right;
  pen.font = `13px ${getComputedStyle(pen.canvas).fontFamily}`;
  pen.textBaseline = 'middle';
  pen.textAlign = 'center';
  phases.forEach((phase, i) => {
    const from = Math.max(leftEdge, acrossAt(phase.from_s, span, sheet));
    const to = Math.min(rightEdge, acrossAt(phase.to_s, span, sheet));
    if (to <= from) return;
    pen.fillStyle = ink.washes[i % 2] as string;
    pen.fillRect(from, sheet.top - 22, to - from, sheet.height - sheet.bottom - sheet.top + 22);
    pen.strokeStyle = ink.rule;
    pen.lineWidth = 1;
    pen.strokeRect(Math.round(from) + 0.5, sheet.top - 21.5, to - from, 21);
    const said = [`${i + 1} ${phase.name}`, `${i + 1}`].find((each) => pen.measureText(each).width < to - from - 4);
    pen.fillStyle = ink.ink;
    if (said) pen.fillText(said, (from + to) / 2, sheet.top - 10.5);
  });
}

export function paintBodyWeight(pen: CanvasRenderingContext2D, newtons: number, scale: ForceScale, sheet: TraceSheet, ink: TraceInk) {
  const y = heightAt(newtons, scale, sheet);
  pen.strokeStyle = ink.ochre;
  pen.lineWidth = 1.2;
  pen.setLineDash([10, 3, 2, 3]);
  segment(pen, sheet.left, y, sheet.width - sheet.right, y);
  pen.setLineDash([]);
}

// A canvas as sharp as the screen is.
export function sharpen(canvas: HTMLCanvasElement, width: number, height: number): { pen: CanvasRenderingContext2D; fine: number } | null {
  const fine = Math.min(3, globalThis.devicePixelRatio || 1);
  if (canvas.width !== Math.round(width * fine)) canvas.width = Math.round(width * fine);
  if (canvas.height !== Math.round(height * fine)) canvas.height = Math.round(height * fine);
  const pen = canvas.getContext('2d');
  if (!pen) return null;
  pen.setTransform(fine, 0, 0, fine, 0, 0);
  pen.clearRect(0, 0, width, height);
  return { pen, fine };
}
