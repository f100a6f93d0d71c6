import { describe, expect, it } from 'vitest';
import { personQuery, setOne, setupQuery, stepped, variable } from './setup_request';
import type { ShownSetting } from './solved';

const setting = (key: string, how = 'given', more: Partial<ShownSetting> = {}): ShownSetting => ({
  key, field: key === 'stance' || key === 'clearance' ? `${key}_in` : `${key}_deg`, name: key, value: 20, unit: 'degrees', decimals: 0, low: 0, high: 70, step: 1, how, error: 0, ...more,
});
const settings = ['stance', 'trunk_lean', 'shin_lean', 'thigh', 'clearance'].map((key) => setting(key));

describe('one setting moved', () => {
  it('leaves to balance what it decides with, and nothing else', () => {
    const given = { stance_in: 30, trunk_lean_deg: 20, thigh_deg: 90 };
    expect(setOne(given, settings, 'split_squat', 'shin_lean', 25)).toEqual({ stance_in: 30, thigh_deg: 90, shin_lean_deg: 25 });
    expect(setOne(given, settings, 'split_squat', 'clearance', 2)).toEqual({ stance_in: 30, trunk_lean_deg: 20, clearance_in: 2 });
    expect(setOne(given, settings, 'split_squat', 'stance', 31)).toEqual({ ...given, stance_in: 31 });
  });
  it('of a pull decides between shin and knee', () => {
    const pulled = [setting('shin_lean'), setting('knee')];
    expect(setOne({ shin_lean_deg: 10 }, pulled, 'hex_bar_deadlift', 'knee', 60)).toEqual({ knee_deg: 60 });
  });
  it('steps onto the marks of its slider, inside its ends', () => {
    const half = setting('stance', 'given', { low: 12, high: 48, step: 0.5 });
    expect(stepped(half, 30, 1)).toBe(30.5);
    expect(stepped(half, 38.17, 1)).toBe(38.5);
    expect(stepped(half, 38.17, -1)).toBe(38);
    expect(stepped(half, 48, 1)).toBe(48);
    expect(stepped(half, 12.2, -1)).toBe(12);
  });
});

describe('the question', () => {
  const chosen = { lift: 'split_squat', hold: '', load: 135, given: { stance_in: 30 } };
  it('carries load in the unit of the gym, and none when nothing is held', () => {
    expect(setupQuery({ athlete: 'a' }, chosen, 'lb')).toEqual({ athlete: 'a', lift: 'split_squat', load_lb: 135, stance_in: 30 });
    expect(setupQuery({}, { ...chosen, hold: 'body' }, 'kg')).toEqual({ lift: 'split_squat', hold: 'body', stance_in: 30 });
  });
  it('sends on what is no number, to be refused in words', () => {
    expect(setupQuery({}, { ...chosen, given: {} }, 'lb', { want: 'hip_share', wanted: '6o', vary: 'stance' })).toMatchObject({ wanted: '6o', vary: 'stance' });
    expect(setupQuery({}, { ...chosen, given: {} }, 'lb', { want: 'start_angle', wanted: '60', vary: 'stance' })).not.toHaveProperty('wanted');
    expect(personQuery('', { sex: 'male', stature: '1,80', mass: '' }, { length: 'cm', mass: 'kg' })).toEqual({ sex: 'male', stature_cm: 1.8 });
  });
  it('varies what the lift takes and balance does not solve', () => {
    expect(variable([setting('stance'), setting('trunk_lean'), setting('shin_lean', 'solved'), setting('thigh')])).toEqual(['stance', 'trunk_lean', 'load']);
  });
});
