import { describe, expect, it } from 'vitest';
import { between, chance, fixed, plainWord, signed, unbroken, withUnit } from './shown';

const speed = { value: 81.94, low: 80.7, high: 83.06, unit: 'mph', decimals: 1 };

describe('numbers as text', () => {
  it('rounds to the decimals the server gives', () => {
    expect(withUnit(speed)).toBe('81.9 mph');
    expect(between(speed)).toBe('80.7 to 83.1');
  });
  it('sets a true minus sign, and none before a rounded zero', () => {
    expect(fixed(-1.25, 2)).toBe('\u22121.25');
    expect(fixed(-0.04, 1)).toBe('0.0');
  });
  it('signs a difference, but not a rounded zero', () => {
    expect(signed(0.43, 1)).toBe('+0.4');
    expect(signed(-0.43, 1)).toBe('\u22120.4');
    expect(signed(0.04, 1)).toBe('0.0');
  });
});

describe('chances', () => {
  it('are whole percents', () => expect(chance(0.263)).toBe('26 %'));
  it('never claim certainty', () => {
    expect(chance(0)).toBe('under 1 %');
    expect(chance(1)).toBe('over 99 %');
  });
});

it('keeps a number and its unit on one line', () => {
  expect(unbroken('Jump power (33 %), 2 days ago')).toBe('Jump power (33\u00a0%), 2\u00a0days ago');
});

it('sets a true minus sign in a sentence, and leaves days and hyphens', () => {
  expect(unbroken('from 2025-06-29 to 2026-03-05 by -3.0 (80 %: -3.6 to -1.2), two-leg')).toBe(
    'from 2025-06-29 to 2026-03-05 by \u22123.0 (80\u00a0%: \u22123.6 to \u22121.2), two-leg',
  );
});

it('sets a key in words', () => expect(plainWord('split_squat_max')).toBe('split squat max'));
