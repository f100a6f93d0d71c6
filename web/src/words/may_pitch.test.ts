import { expect, test } from 'vitest';
import { splitAnswer, whyBeside } from './may_pitch';

const no = 'No, not on Monday 2026-06-01, by the rule (Herons). 2 days of rest after 58 pitches on 2026-05-30: 2026-05-31 to 2026-06-01. Next on Tuesday 2026-06-02. Nothing is written down of 1 of the last 6 days.';

test('the answer is the first word, and nothing of the sentence is lost', () => {
  for (const sentence of [no, 'Yes, at most 85 pitches.', 'Cannot tell: no table covers this sport.', 'Something else.']) {
    const { word, rest } = splitAnswer(sentence);
    expect(word + rest).toBe(sentence);
  }
  expect(splitAnswer(no).word).toBe('No,');
  expect(splitAnswer('Nothing is known.').word).toBe('');
});

test('a sentence beside its columns does not say them twice, and keeps what they do not say', () => {
  expect(whyBeside(no)).toBe('By the rule (Herons). 2 days of rest after 58 pitches on 2026-05-30: 2026-05-31 to 2026-06-01. Nothing is written down of 1 of the last 6 days.');
  expect(whyBeside('No: the plan of Dr. F is not through.')).toBe('The plan of Dr. F is not through.');
  expect(whyBeside('Said otherwise.')).toBe('Said otherwise.');
});
