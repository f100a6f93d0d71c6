import { expect, test } from 'vitest';
import { shownFields, trialsFrom, usualSide } from './trials';

test('empty trials are left out and a decimal comma is read', () => {
  expect(trialsFrom([{ speed_mph: '81,5' }, { speed_mph: ' ' }, { speed_mph: '82' }])).toEqual([{ speed_mph: 81.5 }, { speed_mph: 82 }]);
});

test('the lead leg of a right-hander is the left', () => {
  expect(usualSide('lead_leg', 'right')).toBe('left');
  expect(usualSide('throwing_arm', 'left')).toBe('left');
  expect(usualSide('none', 'right')).toBe('none');
});

test('a test with two ways of measuring shows the first', () => {
  const field = (name: string, needed: boolean) => ({ name, label: name, unit: '', needed });
  expect(shownFields([field('speed_mph', false), field('distance_ft', false)]).map((f) => f.name)).toEqual(['speed_mph']);
  expect(shownFields([field('load_lb', true), field('reps', true), field('reps_in_reserve', false)]).map((f) => f.name)).toEqual([
    'load_lb',
    'reps',
    'reps_in_reserve',
  ]);
});
