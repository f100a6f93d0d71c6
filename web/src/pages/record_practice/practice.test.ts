import { expect, test } from 'vitest';
import { belongs, lineRefused, newPractice, requestOf, saidOf, shownThrowers } from './practice';

const all = [
  { athlete: 'a', name: 'A', sport: 'softball', teams: ['Saltgrass College women, by the Softball clinical guidance'] },
  { athlete: 'b', name: 'B', sport: 'baseball', teams: ['Saltgrass College, by no table known here'] },
  { athlete: 'c', name: 'C', sport: 'javelin', teams: [] },
];
const practice = { ...newPractice('2026-06-01', 'us'), setting: 'bullpen', count: '30' };
const row = { threw: false, none: false, count: '', sore: '' };

test('a team whose name begins another’s is not the other', () => {
  expect(all.filter((each) => belongs(each, 'Saltgrass College')).map((each) => each.athlete)).toEqual(['b']);
  expect(all.filter((each) => belongs(each, 'everybody')).length).toBe(3);
});
test('those not said of are not sent: their day stays unknown', () => {
  const rows = { a: { ...row, threw: true }, b: { ...row, none: true, sore: '1' } };
  expect(requestOf(all, { ...practice, rows })).toEqual({ date: '2026-06-01', setting: 'bullpen', count: 30, lines: [{ athlete: 'a' }, { athlete: 'b', count: 0, soreness_after: 1 }] });
});
test('nobody is sent who is not on the screen', () => {
  const rows = { a: { ...row, threw: true }, b: { ...row, threw: true } };
  const grouped = { ...practice, group: 'softball', rows };
  expect(shownThrowers(all, grouped).length).toBe(1);
  expect(saidOf(all, grouped).map((each) => each.athlete)).toEqual(['a']);
});
test('a distance goes with long toss alone', () => {
  expect(requestOf(all, { ...practice, distance: '120' })).not.toHaveProperty('distance_ft');
  expect(requestOf(all, { ...practice, setting: 'long_toss', distance: '120' })).toMatchObject({ distance_ft: 120 });
});
test('a refusal names the line', () => {
  expect(lineRefused('lines[3].count')).toBe(3);
  expect(lineRefused('count')).toBe(null);
});
