import { describe, expect, it } from 'vitest';
import { addressOf, placeOf } from './route';

describe('addresses', () => {
  it('name a page and what it is about', () => {
    expect(placeOf('#/athlete_record/ona-reyes')).toEqual({ page: 'athlete_record', name: 'ona-reyes' });
    expect(placeOf('#/load_bar')).toEqual({ page: 'load_bar', name: '' });
  });
  it('lead to the throwers when they say nothing', () => {
    for (const hash of ['', '#', '#/']) expect(placeOf(hash).page).toBe('roster');
  });
  it('carry letters outside ASCII and slashes there and back', () => {
    for (const name of ['josé-prueba', 'a/b', '100%']) expect(placeOf(addressOf('athlete_record', name)).name).toBe(name);
  });
  it('with a lone per cent sign are taken as they stand', () => {
    expect(placeOf('#/athlete_record/100%')).toEqual({ page: 'athlete_record', name: '100%' });
  });
});
