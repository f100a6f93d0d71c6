// @vitest-environment happy-dom
import { beforeEach, expect, test } from 'vitest';
import { entryFrom, nothingTyped, openEntriesOf, rememberEntry } from './entry';

beforeEach(() => localStorage.clear());

test('only what was said goes out, in the units on the screen, a comma read', () => {
  const typed = { ...nothingTyped(), setting: 'long_toss', count: '40', distance: '37,5', after: '2', innings: '3' };
  expect(entryFrom('a', '2026-06-01', typed, 'metric')).toEqual({ athlete: 'a', date: '2026-06-01', setting: 'long_toss', count: 40, distance_m: 37.5, soreness_after: 2 });
});
test('innings go with a game alone', () => {
  const typed = { ...nothingTyped(), setting: 'game', count: '60', innings: '4.1', lastBatter: '57' };
  expect(entryFrom('a', '2026-06-01', typed, 'us')).toMatchObject({ innings: '4.1', before_last_batter: 57 });
});
test('a count that is no number goes on as it stands, so that the server refuses it', () => {
  expect(entryFrom('a', '2026-06-01', { ...nothingTyped(), setting: 'bullpen', count: '3o' }, 'us').count).toBe('3o');
});
test('the entry of yesterday is asked about once, a day without throws never', () => {
  const entry = { athlete: 'a', date: '2026-05-31', setting: 'bullpen', count: 30, effort_percent: 80 };
  rememberEntry(entry);
  rememberEntry({ athlete: 'a', date: '2026-05-31', setting: 'none', count: 0 });
  expect(openEntriesOf('a', '2026-05-31')).toEqual([entry]);
  rememberEntry({ ...entry, soreness_next_day: 1 });
  expect(openEntriesOf('a', '2026-05-31')).toEqual([]);
});
