// @vitest-environment happy-dom
import { beforeEach, expect, test } from 'vitest';
import { dayHere, dropFromDevice, keepOnDevice, keepWriter, onDevice, writerToday } from './on_device';

beforeEach(() => localStorage.clear());

test('what is kept comes back, and not after it was dropped', () => {
  expect(keepOnDevice('x', { a: [1] })).toBe(true);
  expect(onDevice('x')).toEqual({ a: [1] });
  dropFromDevice('x');
  expect(onDevice('x')).toBeUndefined();
});
test('a text that is not ours is nothing', () => {
  localStorage.setItem('amentum x', '{"a":');
  expect(onDevice('x')).toBeUndefined();
});
test('the day is the one on the wall, not the one in Greenwich', () => {
  expect(dayHere(new Date(2026, 5, 1, 23, 50))).toBe('2026-06-01');
  expect(dayHere(new Date(2026, 0, 9, 0, 5))).toBe('2026-01-09');
});
test('who writes is forgotten on another day', () => {
  keepWriter('Kim Osei');
  expect(writerToday()).toBe('Kim Osei');
  keepOnDevice('who writes', { day: '2026-01-01', name: 'Kim Osei' });
  expect(writerToday()).toBe('');
});
