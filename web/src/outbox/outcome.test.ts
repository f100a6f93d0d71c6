import { expect, test } from 'vitest';
import { outcomeOf } from './outcome';

test('an answer that asks “Keep it?” has saved nothing, so the entry stays', () => {
  expect(outcomeOf(true, { saved: false, held_before: false, question: 'Far from expected. Keep it?' })).toEqual({
    kind: 'question',
    sentence: 'Far from expected. Keep it?',
  });
});

test('a saved test, one held before and a kept set are taken', () => {
  expect(outcomeOf(true, { saved: true, held_before: false, question: '' }).kind).toBe('taken');
  expect(outcomeOf(true, { saved: false, held_before: true, question: '' }).kind).toBe('taken');
  expect(outcomeOf(true, { key: 'set-00', held_before: true, words: 'This set was already kept.' }).kind).toBe('taken');
});

test('what was taken is let go in silence only when nothing must be read', () => {
  const found = { sentence: 'Done although pain was open.', what_to_do: 'Stop and refer.', severity: 'warns' };
  const readOf = (answer: unknown) => {
    const outcome = outcomeOf(true, answer);
    return outcome.kind === 'taken' ? outcome.read : undefined;
  };
  expect(readOf({ words: 'Kept.', findings: [] })).toEqual([]);
  expect(readOf({ words: 'Kept.', findings: [found] })).toEqual(['Done although pain was open. Stop and refer.']);
  expect(readOf({ words: ['2 kept.'], lines: [{ name: 'Finn', stops: ['No throwing.'] }, { name: 'Wade', stops: [] }] })).toEqual(['Finn: No throwing.']);
  expect(readOf({ pain: { number: 1 }, words: ['Kept.', 'Tell the family.'] })).toEqual(['Kept.', 'Tell the family.']);
  expect(readOf({ saved: true, warnings: ['no place'], words: ['61 mph'] })).toEqual([]);
});

test('a refusal keeps its sentence, also when the body says nothing', () => {
  expect(outcomeOf(false, { refusal: { sentence: 'reps is 0.' } })).toEqual({ kind: 'refused', sentence: 'reps is 0.' });
  expect(outcomeOf(false, null).kind).toBe('refused');
});
