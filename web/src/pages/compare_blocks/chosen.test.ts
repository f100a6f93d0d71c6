import { expect, test } from 'vitest';
import { chosenOf, nameOf, otherThan } from './chosen';

test('the address names one block or both, and is written back as it was read', () => {
  expect(chosenOf('ona-2026-06-08')).toEqual({ first: 'ona-2026-06-08', second: '' });
  for (const name of ['ona-early', 'ona-early,ona-late']) expect(nameOf(chosenOf(name))).toBe(name);
});
test('beside a block lies the newest other, or none', () => {
  expect(otherThan('b', ['c', 'b', 'a'])).toBe('c');
  expect(otherThan('c', ['c', 'b', 'a'])).toBe('b');
  expect(otherThan('c', ['c'])).toBe('');
});
