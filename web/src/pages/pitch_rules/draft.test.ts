import { describe, expect, it } from 'vitest';
import type { Refusal } from '../../api/ask';
import { draftRow, placeOfRefusal, requestOf, type Draft, type DraftRow } from './draft';

const row = (low: string, high: string): DraftRow => ({ ...draftRow(undefined), age_low: low, age_high: high, daily_max: '50' });
const draft: Draft = {
  fields: { organisation: 'Dockside league', sport: 'baseball', year: '2026', age_on: '', source: '', author: 'Kim', reason: '' },
  rows: [row('7', '9'), row('10', '11'), row('10', '11')],
};
const about = (field: string) => placeOfRefusal({ field } as Refusal, draft);

describe('the cell a refusal is about', () => {
  it('is found by place', () => {
    expect(about('rows[1].second_game')).toEqual({ row: 1, field: 'second_game' });
    expect(about('rows.0.rest_to.1')).toEqual({ row: 0, field: 'rest_1_to' });
    expect(about('rows.2.daily_max')).toEqual({ row: 2, field: 'daily_max' });
  });
  it('is found by ages; of two rows for the same ages the later is at fault', () => {
    expect(about('7 to 9 years, rest_2_to')).toEqual({ row: 0, field: 'rest_2_to' });
    expect(about('10 to 11 years, age_low')).toEqual({ row: 2, field: 'age_low' });
  });
  it('may be a field of the whole table, or nowhere', () => {
    expect(about('7 to 9 years, age_day')).toEqual({ row: null, field: 'age_on' });
    expect(about('7 to 9 years, year')).toEqual({ row: null, field: 'year' });
    expect(about('reason')).toEqual({ row: null, field: 'reason' });
    expect(about('rows')).toBeNull();
  });
});

describe('a table as it is sent', () => {
  const sent = (bands: string[]) => {
    const one = row('7', '9');
    bands.forEach((to, k) => (one[`rest_${k}_to`] = to));
    return (requestOf({ ...draft, rows: [one] }, false).rows as { rest_to: unknown[] }[])[0]?.rest_to;
  };
  it('leaves out the bands after the last, and never one before it', () => {
    expect(sent(['20', '35', '50'])).toEqual([20, 35, 50]);
    expect(sent(['20', '', '50'])).toEqual([20, null, 50]);
    expect(sent([])).toEqual([]);
  });
  it('sends what is no number as it was typed', () => expect(sent(['2o'])).toEqual(['2o']));
  it('sends no rows when going back', () => expect(requestOf(draft, true)).toMatchObject({ rows: [], published: true }));
});
