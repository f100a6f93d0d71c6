import { expect, it } from 'vitest';
import { blank, loadsOf, rackOf } from './asked';

it('loads stand apart by spaces, keep a decimal comma, and go on as typed when they are no numbers', () => {
  expect(loadsOf('135 185, 205;225')).toEqual([135, 185, 205, 225]);
  expect(loadsOf('62,5 70')).toEqual([62.5, 70]);
  expect(loadsOf('1o5')).toEqual(['1o5']);
  expect(loadsOf('  ')).toEqual([]);
});
it('a rack asks for a list or for a session, in the gym’s unit', () => {
  expect(rackOf({ ...blank(1), loads: '60' }, 'kg')).toEqual({ means: 'straight_bar', loads_kg: [60] });
  expect(rackOf({ ...blank(1), from: 'session', thrower: 'marisol-quay', week: '2' }, 'lb')).toEqual({ block: 'marisol-quay', week: 2, session: 1 });
});
