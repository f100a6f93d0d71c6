import { expect, test } from 'vitest';
import { shownFields, trialsFrom, usualSide, waysOf } from './trials';

const field = (name: string, needed: boolean) => ({ name, label: name, unit: '', needed });
const speed = [field('speed_mph', true)];
const byTwoWays = ['speed_mph', 'radar_angle_deg', 'distance_ft', 'release_height_in', 'release_angle_deg'].map((name) => field(name, false));
const names = (fields: { name: string }[]) => fields.map((each) => each.name);

test('empty trials are left out and a decimal comma is read', () => {
  expect(trialsFrom([{ speed_mph: '81,5' }, { speed_mph: ' ' }, { speed_mph: '82' }], speed)).toEqual([{ speed_mph: 81.5 }, { speed_mph: 82 }]);
});

test('a mistyped number stays in its trial, and a field no longer shown is not sent', () => {
  expect(trialsFrom([{ speed_mph: '8l' }], speed)).toEqual([{ speed_mph: '8l' }]);
  expect(trialsFrom([{ speed_mph: '81', distance_ft: '20' }], speed)).toEqual([{ speed_mph: 81 }]);
});

test('the lead leg of a right-hander is the left', () => {
  expect(usualSide('lead_leg', 'right')).toBe('left');
  expect(usualSide('throwing_arm', 'left')).toBe('left');
  expect(usualSide('none', 'right')).toBe('none');
});

test('a test with two ways of measuring shows the first until the other is chosen', () => {
  expect(names(waysOf(byTwoWays))).toEqual(['speed_mph', 'distance_ft']);
  expect(names(shownFields(byTwoWays))).toEqual(['speed_mph']);
  expect(names(shownFields(byTwoWays, 'distance_ft'))).toEqual(['distance_ft', 'release_height_in', 'release_angle_deg']);
  expect(names(waysOf(['flight_time_s', 'height_in', 'speed_mph'].map((name) => field(name, false))))).toEqual(['flight_time_s', 'height_in', 'speed_mph']);
});

test('a lift shows what it needs and what was left in reserve', () => {
  expect(names(shownFields([field('load_lb', true), field('reps', true), field('reps_in_reserve', false)]))).toEqual(['load_lb', 'reps', 'reps_in_reserve']);
});
