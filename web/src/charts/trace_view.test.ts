import { describe, expect, it } from 'vitest';
import { bothPlates, readSamples } from './trace_samples';
import { clamped, effortSpan, nearestSample, pinched, placeFlags, shifted, zoomed } from './trace_view';

describe('samples as they travel', () => {
  it('are little-endian 32-bit floats', () => {
    // IEEE 754: 1.0 is 0x3f800000, -2.0 is 0xc0000000, 740.5 is 0x44392000; low byte first.
    const bytes = [0, 0, 0x80, 0x3f, 0, 0, 0, 0xc0, 0, 0x20, 0x39, 0x44];
    expect([...readSamples(btoa(String.fromCharCode(...bytes)))]).toEqual([1, -2, 740.5]);
    expect(readSamples('')).toHaveLength(0);
  });
  it('add up foot by foot', () => expect([...bothPlates(Float32Array.of(1, 2), Float32Array.of(10, 20))]).toEqual([11, 22]));
});

describe('the part on the paper', () => {
  const whole = 10;
  const rate = 1000;
  it('keeps the second under the hand when it is zoomed', () => {
    const near = zoomed({ from: 2, to: 6 }, 0.5, 3, whole, rate);
    expect(near).toEqual({ from: 2.5, to: 4.5 }); // a quarter from the left before and after
  });
  it('never leaves the trace and never comes closer than twenty samples', () => {
    expect(zoomed({ from: 0, to: 10 }, 3, 5, whole, rate)).toEqual({ from: 0, to: 10 });
    expect(zoomed({ from: 4, to: 5 }, 1e-9, 4.5, whole, rate)).toEqual({ from: 4.49, to: 4.51 });
    expect(shifted({ from: 2, to: 4 }, -5, whole, rate)).toEqual({ from: 0, to: 2 });
    expect(shifted({ from: 2, to: 4 }, 50, whole, rate)).toEqual({ from: 8, to: 10 });
    expect(clamped({ from: -3, to: 30 }, whole, rate)).toEqual({ from: 0, to: 10 });
  });
  it('stays under both fingers of a pinch', () => {
    // 0 to 10 s on 500 pixels: fingers on 100 and 200 hold 2 s and 4 s; drawn to 0 and 400 they are 200 pixels a second.
    const span = pinched({ from: 0, to: 10 }, [100, 200], [0, 400], 500, whole, rate);
    expect(span.from).toBeCloseTo(2, 9);
    expect(span.to).toBeCloseTo(4.5, 9);
  });
  it('begins with the effort, or with everything when no event is known', () => {
    expect(effortSpan([{ event: 'quiet_from', used_s: 0.4 }, { event: 'onset', used_s: 2 }, { event: 'landing', used_s: 4 }], whole, rate)).toEqual({ from: 1.76, to: 4.24 });
    expect(effortSpan([], whole, rate)).toEqual({ from: 0, to: 10 });
  });
  it('moves an event by whole samples, inside the trace', () => {
    expect(nearestSample(1.00049, 1000, 5000)).toBe(1);
    expect(nearestSample(1.0006, 1000, 5000)).toBe(1.001);
    expect(nearestSample(-4, 1000, 5000)).toBe(0);
    expect(nearestSample(9, 1000, 5000)).toBe(4.999);
  });
});

describe('flags of events', () => {
  it('share a lane when they do not touch', () => {
    const placed = placeFlags([{ key: 'a', at: 10, width: 50 }, { key: 'b', at: 100, width: 50 }], 300, 4);
    expect(placed.map((flag) => flag.lane)).toEqual([0, 0]);
  });
  it('rise above those they would cover, the earlier one higher', () => {
    const placed = placeFlags([{ key: 'a', at: 10, width: 50 }, { key: 'b', at: 30, width: 50 }, { key: 'c', at: 50, width: 50 }], 300, 4);
    expect(placed.map((flag) => [flag.key, flag.lane])).toEqual([['a', 2], ['b', 1], ['c', 0]]);
  });
  it('stay on the paper at its right edge, and are left out when no lane is free', () => {
    const placed = placeFlags([{ key: 'a', at: 280, width: 50 }, { key: 'b', at: 290, width: 50 }], 300, 1);
    expect(placed).toEqual([{ key: 'a', at: 280, left: 250, lane: -1 }, { key: 'b', at: 290, left: 250, lane: 0 }]);
  });
});
