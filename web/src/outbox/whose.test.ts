// @vitest-environment happy-dom
import { beforeEach, expect, test } from 'vitest';
import { knownThrower, knownThrowers, rememberWhose } from './whose';

beforeEach(() => localStorage.clear());
const finn = { athlete: 'finn-abernarrow', name: 'Finn Abernarrow' };
const mira = { athlete: 'marisol-quay', name: 'Marisol Quay' };

test('an address nobody told of is no thrower', () => {
  rememberWhose('/api/roster', { throwers: [finn] });
  expect(knownThrower('marisol-quay-2026-06-01')).toBeUndefined();
  expect(knownThrower('finn-abernarrow')).toEqual(finn);
});
test('a block that was read is its thrower’s, also before any list of throwers was read', () => {
  rememberWhose('/api/block', { block: 'marisol-quay-2026-06-01', ...mira });
  expect(knownThrower('marisol-quay-2026-06-01')).toEqual(mira);
  rememberWhose('/api/check_staff', { lines: [{ ...finn, sport: 'javelin' }, mira] });
  expect(knownThrowers()).toEqual([finn, mira]);
  expect(knownThrower('marisol-quay-2026-06-01')).toEqual(mira);
});
test('the other answers tell nothing', () => {
  rememberWhose('/api/catalogue', { throwers: [finn] });
  expect(knownThrowers()).toEqual([]);
});
