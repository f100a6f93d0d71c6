import { expect, it } from 'vitest';
import { secondsText, valueBefore, valueOf, type Metric } from './shown_trace';

const metric = (value: number, key = 'jump_height_impulse'): Metric => ({
  metric: key, name: 'Jump height', value, low: null, high: null, unit: 'cm', decimals: 1, error_words: '', note: '', test: '',
});

it('shows a number with the decimals and the unit of the answer', () => expect(valueOf(metric(31.26))).toBe('31.3 cm'));
it('sets the number from before the move beside it, and says when it reads the same', () => {
  expect(valueBefore(metric(31.26), [metric(30.9)])).toEqual({ text: '30.9 cm', same: false });
  expect(valueBefore(metric(31.26), [metric(31.34)])).toEqual({ text: '31.3 cm', same: true });
  expect(valueBefore(metric(31.26), [metric(1, 'other')])).toBeNull();
  expect(valueBefore(metric(31.26), undefined)).toBeNull();
});
it('writes as many decimals as tell two samples apart', () => {
  expect(secondsText(2.4, 1000)).toBe('2.400');
  expect(secondsText(2.4005, 2000)).toBe('2.4005');
});
