import { describe, expect, it } from 'vitest';
import { changeOf, diameterMm, nameOf, oneByOne, plain, thicknessMm } from './plates';

const plates = (...masses: number[]) => masses.map((mass) => ({ name: String(mass), mass }));

describe('plates', () => {
  it('are drawn as competition discs from 10 kg up, whatever the unit', () => {
    expect(diameterMm(45, 'lb')).toBe(450);
    expect(diameterMm(10, 'kg')).toBe(450);
    expect(diameterMm(5, 'kg')).toBe(225);
    expect(diameterMm(0.5, 'kg')).toBe(90);
    expect(thicknessMm(25, 'kg')).toBe(50);
  });
  it('are called by their stamp', () => {
    expect(nameOf('45 lb plate', 'lb')).toBe('45');
    expect(nameOf('35 lb plate, old', 'lb')).toBe('35 old');
    expect(nameOf('20 kg plate', 'lb')).toBe('20 kg');
    expect(nameOf('2.5kg', 'kg')).toBe('2.5');
    expect(nameOf('the big one', 'kg')).toBe('the big one');
  });
  it('come off from the outside, and only what must', () => {
    expect(changeOf(plates(45, 25, 10), plates(45, 10))).toEqual({ off: plates(10, 25), on: plates(10), stay: 1 });
    expect(changeOf([], plates(45))).toEqual({ off: [], on: plates(45), stay: 0 });
    expect(changeOf(plates(45), plates(45))).toEqual({ off: [], on: [], stay: 1 });
  });
  it('stand one by one; masses are written without a zero tail', () => {
    expect(oneByOne([{ label: '45 lb plate', mass: 45, count: 2 }, { label: '5 lb plate', mass: 5, count: 1 }], 'lb')).toEqual(plates(45, 45, 5));
    expect(plain(2.5)).toBe('2.5');
    expect(plain(34.400000001)).toBe('34.4');
  });
});
