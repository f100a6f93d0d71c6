// @vitest-environment happy-dom
import { expect, test } from 'vitest';
import { draftOf, dropDraft, keepDraft, keepMeasuring, keptMeasuring } from './kept_here';

test('rater and tool are kept for the day and gone the next', () => {
  keepMeasuring('2026-06-01', { rater: 'Ines', tool: 'tool 1' });
  expect(keptMeasuring('2026-06-01')).toEqual({ rater: 'Ines', tool: 'tool 1' });
  expect(keptMeasuring('2026-06-02')).toEqual({ rater: '', tool: '' });
  localStorage.setItem('amentum joint ranges', 'not ours');
  expect(keptMeasuring('2026-06-01')).toEqual({ rater: '', tool: '' });
});

test('a draft comes back as it was, and a fresh one does not share its cells', () => {
  const typed = draftOf('a');
  typed.left[0] = '38';
  keepDraft('a', typed);
  expect(draftOf('a').left).toEqual(['38', '']);
  expect(draftOf('b').left).toEqual(['', '']);
  dropDraft('a');
  expect(draftOf('a').left).toEqual(['', '']);
});
