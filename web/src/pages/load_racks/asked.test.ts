import { expect, it } from 'vitest';
import { blank, loadsAfter, loadsOf, prefilled, rackOf } from './asked';

it('loads stand apart by spaces, keep a decimal comma, and go on as typed when they are no numbers', () => {
  expect(loadsOf('135 185, 205;225')).toEqual([135, 185, 205, 225]);
  expect(loadsOf('62,5 70')).toEqual([62.5, 70]);
  expect(loadsOf('1o5')).toEqual(['1o5']);
  expect(loadsOf('  ')).toEqual([]);
});
it('in a gym of another unit untouched loads are its own, and typed ones are gone', () => {
  expect(loadsAfter(prefilled('lb'), 'lb', 'kg')).toBe(prefilled('kg'));
  expect(loadsAfter('185 195', 'lb', 'kg')).toBe('');
  expect(loadsAfter('185 195', 'lb', 'lb')).toBe('185 195');
});
it('a rack asks for a list or for a session, in the gym’s unit', () => {
  expect(rackOf({ ...blank(1), loads: '60' }, 'kg')).toEqual({ means: 'straight_bar', loads_kg: [60] });
  expect(rackOf({ ...blank(1), from: 'session', thrower: 'marisol-quay', week: '2' }, 'lb')).toEqual({ block: 'marisol-quay', week: 2, session: 1 });
});
