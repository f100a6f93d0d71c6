import { expect, test } from 'vitest';
import { intervalScale } from '../../charts/interval_geometry';
import { errorRows, unsigned } from './error_rows';

const pooled = { value: 1.01, low: 0.98, high: 1.03 };

test('the published error is a point without an interval, and a missing own one is not drawn', () => {
  const rows = errorRows({ published: 1, own: null, pooled });
  expect(rows.map((each) => each.row)).toEqual(['published', 'own', 'pooled']);
  expect(rows[0]?.drawn).toEqual({ value: 1, low: 1, high: 1 });
  expect(rows[1]?.drawn).toBeUndefined();
  expect(rows[2]?.drawn).toEqual(pooled);
});

test('the axis of errors begins at zero and bears no plus', () => {
  const scale = unsigned(intervalScale([pooled]));
  expect(scale.domain[0]).toBe(0);
  expect(scale.ticks.map((tick) => tick.text).join('')).not.toContain('+');
});
