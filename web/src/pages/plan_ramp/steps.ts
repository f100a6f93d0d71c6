// Steps being written: text as typed, how they go into a request, and which week a planned day belongs to.
import type { Answer } from '../../api/ask';
import { numberOrText } from '../../quantities/typed';

export type Ramp = Answer<'/api/plan_ramp', 'post'>;

export interface StepDraft {
  date: string; // as planned; '' when none stands
  throws: string;
  distance: string;
  effort: string;
  words: string;
}

export const emptyStep = (): StepDraft => ({ date: '', throws: '', distance: '', effort: '', words: '' });
const typed = (value: number | null | undefined) => (value == null ? '' : String(value));

export function draftsOf(steps: Ramp['steps']): StepDraft[] {
  return steps.map((step) => ({
    date: step.date ?? '',
    throws: String(step.throws),
    distance: typed(step.distance_ft ?? step.distance_m),
    effort: typed(step.effort_percent),
    words: step.words ?? '',
  }));
}

export function stepsAsked(drafts: StepDraft[], unit: 'ft' | 'm') {
  return drafts.map((draft) => ({
    throws: numberOrText(draft.throws),
    [unit === 'ft' ? 'distance_ft' : 'distance_m']: numberOrText(draft.distance),
    effort_percent: numberOrText(draft.effort),
    words: draft.words || null,
  }));
}

// The week (0 ...) that begins with this step, or null: for headings between the steps.
export function weekBeginning(drafts: StepDraft[], weeks: Ramp['weeks'], step: number): number | null {
  const date = drafts[step]?.date;
  if (!date) return null;
  const weekOf = (day: string) => weeks.filter((week) => week.monday <= day).length - 1;
  const week = weekOf(date);
  const before = drafts[step - 1]?.date;
  return week >= 0 && (!before || weekOf(before) !== week) ? week : null;
}
