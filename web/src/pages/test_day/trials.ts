// How many trials a test usually starts with, and how typed text becomes the request's numbers. No training number here.
export interface Field {
  name: string;
  label: string;
  unit: string;
  needed: boolean;
}

// By what is measured; a person can add or leave out trials.
export function usualTrials(test: string): number {
  if (test === 'throwing_velocity') return 5;
  if (/throw|jump|bound/.test(test)) return 3;
  if (/rotation|flexion|force/.test(test)) return 2;
  return 1;
}

// Fields shown at once: the needed ones, or the first way of measuring when a test can be taken in more than one.
export function shownFields(fields: Field[]): Field[] {
  const needed = fields.filter((field) => field.needed);
  const extra = fields.filter((field) => field.name === 'reps_in_reserve');
  return needed.length ? [...needed, ...extra] : fields.slice(0, 1);
}

export type Typed = Record<string, string>;

// Empty trials are left out; a comma typed as decimal mark is read as one.
export function trialsFrom(typed: Typed[]): Record<string, number>[] {
  return typed
    .map((trial) =>
      Object.fromEntries(
        Object.entries(trial)
          .filter(([, text]) => text.trim() !== '')
          .map(([name, text]) => [name, Number(text.trim().replace(',', '.'))]),
      ),
    )
    .filter((trial) => Object.keys(trial).length > 0);
}

export function usualSide(sideRule: string, throwingHand: string): string {
  const other = throwingHand === 'right' ? 'left' : 'right';
  if (sideRule === 'lead_leg') return other;
  return sideRule === 'throwing_arm' ? throwingHand : 'none';
}
