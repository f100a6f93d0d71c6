import { describe, expect, it } from 'vitest';
import { addressOf, placeOf } from './route';

describe('addresses', () => {
  it('name a page and what it is about', () => {
    expect(placeOf('#/athlete_record/ona-reyes')).toEqual({ page: 'athlete_record', name: 'ona-reyes', day: '' });
    expect(placeOf('#/load_bar')).toEqual({ page: 'load_bar', name: '', day: '' });
  });
  it('may name a day', () => {
    expect(placeOf(addressOf('check_arm', 'ona-reyes', '2026-06-04'))).toEqual({ page: 'check_arm', name: 'ona-reyes', day: '2026-06-04' });
  });
  it('lead to the throwers when they say nothing', () => {
    for (const hash of ['', '#', '#/']) expect(placeOf(hash).page).toBe('roster');
  });
  it('carry letters outside ASCII and slashes there and back', () => {
    for (const name of ['josé-prueba', 'a/b', '100%']) expect(placeOf(addressOf('athlete_record', name)).name).toBe(name);
  });
  it('with a lone per cent sign are taken as they stand', () => {
    expect(placeOf('#/athlete_record/100%')).toEqual({ page: 'athlete_record', name: '100%', day: '' });
  });
});
