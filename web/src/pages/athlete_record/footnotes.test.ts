import { expect, it } from 'vitest';
import { footnotes } from './footnotes';

it('says a repeated remark once and letters the lines', () => {
  const { notes, letterOf } = footnotes(['with 34 others', 'with 35 others', 'with 34 others', '']);
  expect(notes).toEqual([
    { letter: 'a', text: 'with 34 others' },
    { letter: 'b', text: 'with 35 others' },
  ]);
  expect(letterOf('with 35 others')).toBe('b');
  expect(letterOf('')).toBe('');
});
