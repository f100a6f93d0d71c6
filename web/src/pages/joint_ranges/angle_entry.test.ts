import { expect, test } from 'vitest';
import { agreementOf, agreementQuery, emptyReadings, nextField, pressed, recordBody, sidesInOrder } from './angle_entry';

test('keys add digits and one point, and take the last away', () => {
  expect(['1', '1', '2', '.', '.', '5'].reduce(pressed, '')).toBe('112.5');
  expect(pressed('112', 'back')).toBe('11');
  expect(pressed('', 'back')).toBe('');
});

test('the throwing side comes first, of the hips the lead leg, which is the other one', () => {
  expect(sidesInOrder('throwing_arm', 'right')).toEqual(['right', 'left']);
  expect(sidesInOrder('lead_leg', 'right')).toEqual(['left', 'right']);
  expect(sidesInOrder('throwing_arm', 'left')).toEqual(['left', 'right']);
});

test('Next goes through one side, also a third reading, then to the other side, then nowhere', () => {
  const readings = { ...emptyReadings(), right: ['1', '2', ''] };
  const order = sidesInOrder('throwing_arm', 'right');
  expect(nextField(order, readings, { side: 'right', index: 1 })).toEqual({ side: 'right', index: 2 });
  expect(nextField(order, readings, { side: 'right', index: 2 })).toEqual({ side: 'left', index: 0 });
  expect(nextField(order, readings, { side: 'left', index: 1 })).toBeUndefined();
});

test('readings are asked about only when all are numbers', () => {
  const inputs = JSON.parse(new URLSearchParams(agreementQuery(['112,5', '110', ''], 1.5, 1.9)).get('inputs') ?? '');
  expect(inputs).toEqual({ angles_deg: '112.5,110', trial_error_deg: '1.5', day_error_deg: '1.9' });
  expect(agreementQuery(['1l0', '110'], 1.5, 1.9)).toBeUndefined();
  expect(agreementQuery(['', ''], 1.5, 1.9)).toBeUndefined();
});

test('an answer without its numbers is no agreement', () => {
  const number = (value: number) => ({ value, unit: 'deg', standard_error: null });
  const outputs = { mean: { ...number(98), standard_error: 2.2 }, spread: number(6), spread_allowed: number(4.2) };
  expect(agreementOf('95,101', { outputs, notes: ['take one more.'] })).toEqual({ of: '95,101', mean: 98, error: 2.2, spread: 6, allowed: 4.2, note: 'take one more.' });
  expect(agreementOf('95,101', { outputs: {} })).toBeUndefined();
});

test('the request names rater and tool, and a mistyped angle goes on to be refused', () => {
  const who = { athlete: 'ona-reyes', date: '2026-06-01', test: 'hip_internal_rotation', rater: 'Ines', tool: 'tool 1' };
  expect(recordBody(who, 'left', ['38', '3b', ''], false)).toEqual({
    athlete: 'ona-reyes', date: '2026-06-01', test: 'hip_internal_rotation', side: 'left', rater: 'Ines', device: 'tool 1', trials: [{ angle_deg: 38 }, { angle_deg: '3b' }], keep: false,
  });
});
