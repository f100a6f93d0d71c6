import { expect, test } from 'vitest';
import { noThrow, throwQuery } from '../measure_ball_throw/throw_request';
import { landingQuery, noLanding } from './landing_request';

test('a landing goes out in the unit chosen, without what was left empty, and with what is no number as typed', () => {
  expect(landingQuery('a', { ...noLanding(), force_x: '-0,8', force_y: '1.9', shin: '-5', thigh: '40' }, 'in')).toEqual({ athlete: 'a', force_x_bw: -0.8, force_y_bw: 1.9, shin_lean_deg: -5, thigh_deg: 40 });
  expect(landingQuery('a', { ...noLanding(), unit: 'n', force_y: '18oo', pressure: '3' }, 'cm')).toEqual({ athlete: 'a', force_y_n: '18oo', pressure_cm: 3 });
});

test('a kneeling throw sends no shank, a standing one does', () => {
  const typed = { ...noThrow(), ball: '4', motion: { ...noThrow().motion, shank_deg: '80', thigh_deg: '85', trunk_rate: '-300' } };
  expect(throwQuery('a', typed, 'lb')).toEqual({ athlete: 'a', stance: 'kneeling', ball_lb: 4, thigh_deg: 85, trunk_rate: -300 });
  expect(throwQuery('a', { ...typed, stance: 'standing' }, 'lb')).toHaveProperty('shank_deg', 80);
});
