import { describe, expect, it } from 'vitest';
import { arcPath, arcPlace, onCircle, quarterTicks, quarterTurn, sweepOf } from './figure_arcs';
import type { DrawnSetup, Points, Vector } from './figure_drawn';
import { arrowOf, forceWords, markLength, newtonsOfMark, padBottom } from './figure_forces';
import { extentOf, liftFrame, union, viewOf } from './figure_frame';
import { boxOf, labelsOf, meet, type LabelRoom } from './figure_labels';
import { limbPaths } from './figure_limbs';

const margins = { side: 10, above: 14, below: 84 };

describe('an arc', () => {
  it('sweeps a quarter turn for the newton-metres of a quarter turn, and in proportion', () => {
    expect(sweepOf(150, 150)).toBe(90);
    expect(sweepOf(75, 150)).toBe(45);
    expect(sweepOf(-300, 150)).toBe(-180);
    expect(sweepOf(0, 150)).toBe(0);
  });
  it('never closes on itself, however large the moment', () => expect(Math.abs(sweepOf(1e6, 100))).toBeLessThan(360));
  it('has a quarter turn of a round number that keeps the largest within three quarters', () => {
    for (const largest of [1, 40, 88, 223, 297, 310, 999]) {
      const quarter = quarterTurn(largest);
      expect(sweepOf(largest, quarter)).toBeLessThanOrEqual(270);
      expect(String(quarter)).toMatch(/^[1-9][0-9]?0*$/);
    }
  });
  // Straight leg, upright trunk, face to the right: muscles that straighten lie in front of the knee, behind hip and ankle.
  const standing: Points = { ankle: [0, 0], knee: [0, 0.4], hip: [0, 0.8], shoulder: [0, 1.3] };
  it('starts at the bone above the joint, on the side of the muscles that straighten it', () => {
    const side = (joint: string) => {
      const place = arcPlace(joint, standing)!;
      expect(place.start).toBeCloseTo(0, 9);
      return onCircle([0, 0], 1, place.start + place.turn * 90)[0];
    };
    expect(side('lead_knee')).toBeCloseTo(1, 9);
    expect(side('lead_hip')).toBeCloseTo(-1, 9);
    expect(side('lead_ankle')).toBeCloseTo(-1, 9);
  });
  it('starts where a level thigh points: backward from the knee', () => {
    expect(arcPlace('lead_knee', { knee: [0.4, 0.45], hip: [0, 0.45] })!.start).toBeCloseTo(-90, 9);
    expect(arcPlace('lead_knee', {})).toBeUndefined();
    expect(arcPlace('wing', standing)).toBeUndefined();
  });
  it('ends where its sweep ends, the long way round when it is beyond half a turn', () => {
    const numbers = (path: string) => path.match(/-?[\d.e-]+/g)!.map(Number);
    const [x0, y0, rx, ry, , large, clockwise, x1, y1] = numbers(arcPath([100, 100], 20, 0, 270)) as [number, number, number, number, number, number, number, number, number];
    expect([x0, y0, rx, ry, large, clockwise]).toEqual([100, 80, 20, 20, 1, 1]);
    expect(x1).toBeCloseTo(80, 9); // three quarters clockwise from the top: at the left
    expect(y1).toBeCloseTo(100, 9);
    expect(numbers(arcPath([100, 100], 20, 0, -90))[6]).toBe(0);
    expect(arcPath([0, 0], 20, 30, 30)).toBe('');
  });
  it('bears a tick at each quarter turn passed', () => {
    expect(quarterTicks(200)).toEqual([90, 180]);
    expect(quarterTicks(-100)).toEqual([-90]);
    expect(quarterTicks(60)).toEqual([]);
  });
});

describe('the scale', () => {
  const frame = { left: -1.2, right: 0.8, bottom: 0, top: 1.5 };
  it('is one for both directions, the floor low and the frame inside the picture', () => {
    for (const width of [366, 820]) {
      const view = viewOf(frame, width, 640, margins);
      const [x0, y0] = view.at([frame.left, frame.bottom]);
      const [x1, y1] = view.at([frame.right, frame.top]);
      expect((x1 - x0) / 2).toBeCloseTo(view.scale, 9);
      expect((y0 - y1) / 1.5).toBeCloseTo(view.scale, 9);
      expect(x0).toBeGreaterThanOrEqual(margins.side - 1e-9);
      expect(x1).toBeLessThanOrEqual(width - margins.side + 1e-9);
      expect(y1).toBeCloseTo(margins.above, 9);
      expect(view.height - y0).toBeGreaterThanOrEqual(margins.below - 1e-9);
      expect(view.height).toBeLessThanOrEqual(641);
    }
  });
  it('does not depend on where the sliders stand', () => {
    const given = { lift: 'split_squat', stature: 1.8, stance: 1.2, box: 0 };
    expect(liftFrame(given)).toEqual(liftFrame({ ...given }));
    expect(liftFrame({ ...given, lift: 'step_up', box: 0.5 }).bottom).toBe(-0.5);
    expect(union([frame, { left: -1, right: 2, bottom: -0.4, top: 1 }])).toEqual({ left: -1.2, right: 2, bottom: -0.4, top: 1.5 });
  });
  it('holds the discs of the load', () => {
    const drawing = { points: [{ point: 'load', x: 0, y: 1.4 }, { point: 'toe', x: 0.1, y: 0 }], disc_radius: 0.225, floor_y: -0.1 } as DrawnSetup;
    expect(extentOf(drawing)).toEqual({ left: -0.225, right: 0.225, bottom: -0.1, top: 1.625 });
    const low = { ...drawing, floor_y: 0, points: [{ point: 'load', x: 0, y: 0.15 }] }; // a disc of 0.225 m stands on the floor
    expect(extentOf(low)).toMatchObject({ bottom: 0, top: 0.45 });
  });
});

describe('a force', () => {
  const view = viewOf({ left: -1, right: 1, bottom: 0, top: 1 }, 420, 640, margins);
  it('pushes up with its point where it acts, to scale', () => {
    const { tail, up } = arrowOf({ force: 'front_foot', x: 0, y: 0, force_x: 0, force_y: 500 }, view, 500);
    const [x, y] = view.at([0, 0]);
    expect(up).toBe(true);
    expect(tail[0]).toBeCloseTo(x, 9);
    expect(tail[1] - y).toBeCloseTo(markLength, 9);
  });
  it('has a key of a round number', () => {
    expect(newtonsOfMark(1182)).toBe(750);
    expect((1182 / 750) * markLength).toBeLessThanOrEqual(72);
  });
  it('is said in its parts when it is aslant', () => {
    const force = { force: 'front_foot', x: 0, y: 0, force_x: 0.2, force_y: 939.6 };
    expect(forceWords(force)).toBe('940 N');
    expect(forceWords({ ...force, force_x: -438 })).toBe('940 N up, 438 N back');
  });
  it('is numbered under a pad, never inside it', () => {
    const drawing = { floor_y: 0, pad_height: 0.4 } as DrawnSetup;
    expect(padBottom(drawing, view)).toBeCloseTo(view.at([0, 0.31])[1], 9);
    expect(padBottom({ ...drawing, pad_height: 0.05 }, view)).toBeCloseTo(view.at([0, 0])[1], 9);
  });
});

describe('labels', () => {
  const room: LabelRoom = { width: 366, floor: 300, radius: 17, toe: 250, leg: [[150, 200], [60, 210], [20, 195]], thick: 9 };
  const wanted = (ankle: Vector) => [
    { joint: 'lead_hip', at: [150, 200] as Vector, lines: ['hip', '249 N m'] },
    { joint: 'lead_knee', at: [240, 250] as Vector, lines: ['knee', '228 N m'] },
    { joint: 'lead_ankle', at: ankle, lines: ['ankle', '63 N m'] },
  ];
  it('never meet one another and never leave the picture', () => {
    for (let y = 240; y <= 300; y += 5) {
      const boxes = labelsOf(wanted([200, y]), room).map(boxOf);
      for (const [i, a] of boxes.entries()) {
        expect(a.left).toBeGreaterThanOrEqual(0);
        expect(a.right).toBeLessThanOrEqual(room.width);
        for (const b of boxes.slice(i + 1)) expect(meet(a, b)).toBe(false);
      }
    }
  });
  it('of the hip stand over a rear leg that lies behind it', () => {
    const hip = labelsOf(wanted([200, 280]), room)[0]!;
    expect(boxOf(hip).bottom).toBeLessThan(200);
  });
  it('of the ankle stand right of a disc that would hide them', () => {
    const ankle = labelsOf(wanted([200, 280]), { ...room, disc: { x: 230, y: 280, radius: 40 } })[2]!;
    expect(boxOf(ankle).left).toBeGreaterThan(270);
  });
});

describe('a figure', () => {
  const points: Points = { heel: [-0.06, 0], toe: [0.2, 0], ankle: [0, 0.07], knee: [0.25, 0.45], hip: [-0.18, 0.45], shoulder: [0, 0.95], head_top: [0.11, 1.27] };
  it('has the parts whose ends are given, and no others', () => {
    const view = viewOf({ left: -1, right: 1, bottom: 0, top: 1.5 }, 800, 640, margins);
    const { rear, lead, trunk, arm } = limbPaths(points, 1.8, view.at);
    expect([rear.length, lead.length, trunk.length, arm.length]).toEqual([0, 3, 2, 0]);
    for (const path of [...lead, ...trunk]) expect(path).toMatch(/^M[-\d.,CLZ e]+$/);
  });
  it('keeps a limb round the line between its joints', () => {
    const shank = limbPaths({ knee: [0, 1], ankle: [0, 0] }, 2, ([x, y]) => [x, y]).lead[0]!;
    const xs = shank.match(/-?[\d.]+(?:e-?\d+)?/g)!.map(Number).filter((_, i) => i % 2 === 0);
    expect(Math.max(...xs)).toBeGreaterThan(0.02);
    expect(Math.min(...xs)).toBeLessThan(-0.05); // the calf lies behind
    expect(Math.min(...xs)).toBeGreaterThan(-0.12);
  });
});
