import { expect, test } from 'vitest';
import { givenLoads, loadQuery } from './given_loads';

test('an empty row is left out, a decimal comma is read, and a half row goes on to be refused', () => {
  const rows = [{ load: '135', speed: '0,74' }, { load: ' ', speed: '' }, { load: '185', speed: '' }, { load: '', speed: '0.4' }];
  expect(givenLoads(rows, 'lb')).toEqual([{ load_lb: 135, speed_ms: 0.74 }, { load_lb: 185 }, { speed_ms: 0.4 }]);
});

test('what is no number stays in its row, for the server to refuse', () => {
  expect(givenLoads([{ load: '1o0', speed: '0.5' }], 'kg')).toEqual([{ load_kg: '1o0', speed_ms: 0.5 }]);
});

test('with nothing typed no list is sent, so that the held readings are used', () => {
  expect(loadQuery('ona-reyes', 'pull_up_max', [{ load: '', speed: '' }], 'lb', '')).toBe('athlete=ona-reyes&test=pull_up_max');
  const query = new URLSearchParams(loadQuery('ona-reyes', 'pull_up_max', [{ load: '0', speed: '0.8' }], 'lb', '150'));
  expect(JSON.parse(query.get('loads') ?? '')).toEqual([{ load_lb: 0, speed_ms: 0.8 }]);
  expect(query.get('body_mass_lb')).toBe('150');
});
