import { expect, test } from 'vitest';
import { numberOrText } from './typed';

test('a decimal comma and a point are the same number, and nothing typed is nothing given', () => {
  expect(numberOrText('81,5')).toBe(81.5);
  expect(numberOrText(' 81.5 ')).toBe(81.5);
  expect(numberOrText('-25')).toBe(-25);
  expect(numberOrText('  ')).toBeNull();
});

test('what is no number is sent as typed, never left out', () => {
  expect(JSON.stringify({ load_lb: numberOrText('1o5') })).toBe('{"load_lb":"1o5"}');
  expect(JSON.stringify({ load_lb: numberOrText('1,234,5') })).toBe('{"load_lb":"1,234,5"}');
  expect(numberOrText('Infinity')).toBe('Infinity');
});
