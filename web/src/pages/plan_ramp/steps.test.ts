import { expect, it } from 'vitest';
import { draftsOf, emptyStep, stepsAsked, weekBeginning } from './steps';

const step = (date: string) => ({ ...emptyStep(), date, throws: '20' });
const weeks = [{ monday: '2026-06-02', throws: 60 }, { monday: '2026-06-09', throws: 80 }];

it('sets a heading before the first step of each week, and none between', () => {
  const drafts = [step('2026-06-02'), step('2026-06-08'), step('2026-06-09')];
  expect(drafts.map((_, i) => weekBeginning(drafts, weeks, i))).toEqual([0, null, 1]);
  expect(weekBeginning([step('')], weeks, 0)).toBeNull();
});
it('sends steps as typed, in the unit chosen', () => {
  const [asked] = stepsAsked([{ date: '2026-06-02', throws: '2o', distance: '45', effort: '', words: '' }], 'm');
  expect(asked).toEqual({ throws: '2o', distance_m: 45, effort_percent: null, words: null });
});
it('shows a step of the answer as it stands', () => {
  expect(draftsOf([{ date: '2026-06-02', throws: 30, distance_ft: 60, effort_percent: null, words: 'easy' }])).toEqual([
    { date: '2026-06-02', throws: '30', distance: '60', effort: '', words: 'easy' },
  ]);
});
