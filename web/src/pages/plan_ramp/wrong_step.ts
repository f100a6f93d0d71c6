// Which step a refusal is about: "steps[3].throws", "steps.3.distance_ft".
import type { Refusal } from '../../api/ask';

export interface WrongStep {
  step: number;
  field: string; // throws, distance, effort, words
  sentence: string;
}

export function wrongStep(refusal: Refusal | undefined): WrongStep | null {
  const named = /^steps[.[](\d+)\]?\.([a-z]+)/.exec(refusal?.field ?? '');
  return refusal && named ? { step: Number(named[1]), field: named[2] ?? '', sentence: refusal.sentence } : null;
}
