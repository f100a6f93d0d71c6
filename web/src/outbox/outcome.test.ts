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

test('a refusal keeps its sentence, also when the body says nothing', () => {
  expect(outcomeOf(false, { refusal: { sentence: 'reps is 0.' } })).toEqual({ kind: 'refused', sentence: 'reps is 0.' });
  expect(outcomeOf(false, null).kind).toBe('refused');
});
