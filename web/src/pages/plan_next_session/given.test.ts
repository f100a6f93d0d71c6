import { describe, expect, test } from 'vitest';
import type { Waiting } from '../../outbox/outbox';
import { hasLeft, saidOfMost, saysMore, withWaiting, type Line, type Next } from './given';

const line = (exercise: string, done: number, left: number, ...why: string[]) =>
  ({ exercise, sets_done: done, sets_left: left, why: why.map((sentence) => ({ sentence })) }) as unknown as Line;
const entry = (exercise: string, more = {}) =>
  ({ route: '/api/log_set', words: '', body: { block: 'b', date: '2026-06-01', exercise, ...more } }) as Waiting;

describe('sets that wait on the device count as done', () => {
  const next = { block: 'b', today: '2026-06-01', lines: [line('row', 1, 2), line('press', 0, 1)] } as unknown as Next;
  const counts = (entries: Waiting[]) => withWaiting(next, entries).lines.map((each) => [each.sets_done, each.sets_left]);
  test('each for its own line', () => expect(counts([entry('row'), entry('press')])).toEqual([[2, 1], [1, 0]]));
  test('more than were left leave none', () => expect(counts([entry('press'), entry('press')])).toEqual([[1, 2], [2, 0]]));
  test('not those of another day, block or kind', () =>
    expect(counts([entry('row', { date: '2026-05-31' }), entry('row', { block: 'c' }), { ...entry('row'), route: '/api/record_test' }])).toEqual([[1, 2], [0, 1]]));
});

test('an entry has left also when another came in its place', () => {
  const [first, second] = [{ ...entry('row'), id: 1 }, { ...entry('row'), id: 2 }];
  expect(hasLeft([first], [first, second])).toBe(false);
  expect(hasLeft([first], [second])).toBe(true);
});

describe('a reason that stands on many lines', () => {
  const lines = [line('a', 0, 1, 'as written'), line('b', 0, 1, 'lighter'), line('c', 0, 1, 'as written'), line('d', 0, 1, 'as written')];
  test('is said once', () => expect(saidOfMost(lines)).toBe('as written'));
  test('and the others say theirs', () => expect(lines.filter((each) => saysMore(each, 'as written')).map((each) => each.exercise)).toEqual(['b']));
  test('of two lines each says its own', () => expect(saidOfMost(lines.slice(0, 3))).toBeUndefined());
});
