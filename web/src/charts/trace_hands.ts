// What hands do to the paper of a trace: one finger or the mouse drags it along, two fingers or the wheel change how
// close it is, and near the pole of a movable event the hand takes the event instead.
import type { Span } from './trace_view';
import { pinched, shifted, zoomed } from './trace_view';

export interface TraceHands {
  span: () => Span;
  put: (span: Span) => void;
  whole: () => number;
  rate: () => number;
  paper: () => { left: number; width: number }; // of the curve, in pixels of the element
  eventNear: (x: number, reach: number) => string | null;
  drag: (event: string, x: number) => void;
  dropped: () => void;
  wheelZooms: () => boolean; // without Ctrl
}

export function watchHands(hands: TraceHands) {
  return (element: HTMLElement) => {
    const down = new Map<number, number>(); // pointer to x
    let start: { span: Span; places: number[] } | null = null;
    let taken: string | null = null;
    const xOf = (event: PointerEvent | WheelEvent) => event.clientX - element.getBoundingClientRect().left;
    const begin = () => (start = { span: hands.span(), places: [...down.values()] });

    const press = (event: PointerEvent) => {
      if (event.button !== 0) return;
      element.setPointerCapture(event.pointerId);
      down.set(event.pointerId, xOf(event));
      taken = down.size === 1 ? hands.eventNear(xOf(event), event.pointerType === 'touch' ? 22 : 8) : null;
      begin();
    };
    const move = (event: PointerEvent) => {
      if (!down.has(event.pointerId)) {
        element.style.cursor = event.pointerType === 'mouse' && hands.eventNear(xOf(event), 8) ? 'ew-resize' : '';
        return;
      }
      down.set(event.pointerId, xOf(event));
      if (!start) return;
      if (taken) return hands.drag(taken, xOf(event));
      const { left, width } = hands.paper();
      const now = [...down.values()];
      const [was0 = 0, was1 = 0] = start.places;
      if (now.length === 1) {
        const perPixel = (start.span.to - start.span.from) / width;
        hands.put(shifted(start.span, (was0 - (now[0] as number)) * perPixel, hands.whole(), hands.rate()));
      } else {
        const [a = 0, b = 0] = now;
        hands.put(pinched(start.span, [was0 - left, was1 - left], [a - left, b - left], width, hands.whole(), hands.rate()));
      }
    };
    const lift = (event: PointerEvent) => {
      if (!down.delete(event.pointerId)) return;
      if (taken) hands.dropped();
      taken = null;
      begin();
    };
    const wheel = (event: WheelEvent) => {
      const sideways = Math.abs(event.deltaX) > Math.abs(event.deltaY) || event.shiftKey;
      if (!sideways && !event.ctrlKey && !hands.wheelZooms()) return; // the page scrolls on
      event.preventDefault();
      const { left, width } = hands.paper();
      const span = hands.span();
      const perPixel = (span.to - span.from) / width;
      if (sideways) return hands.put(shifted(span, (event.deltaX || event.deltaY) * perPixel, hands.whole(), hands.rate()));
      const factor = Math.exp(Math.max(-120, Math.min(120, event.deltaY)) * 0.0025);
      hands.put(zoomed(span, factor, span.from + (xOf(event) - left) * perPixel, hands.whole(), hands.rate()));
    };
    element.addEventListener('pointerdown', press);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerup', lift);
    element.addEventListener('pointercancel', lift);
    element.addEventListener('wheel', wheel, { passive: false });
    return () => {
      element.removeEventListener('pointerdown', press);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerup', lift);
      element.removeEventListener('pointercancel', lift);
      element.removeEventListener('wheel', wheel);
    };
  };
}
