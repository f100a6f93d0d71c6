// How many trials a test usually starts with, and which fields are typed at once. No training number here.
import { numberOrText } from '../../quantities/typed';

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

// A test that needs none of its fields by itself can be taken in more than one way: by speed or by distance, by the
// time in the air or by the height. Each such way is one field and what belongs to it.
const firstOfAWay = /^(speed|flight_time|height|distance)/;

export function waysOf(fields: Field[]): Field[] {
  return fields.some((field) => field.needed) ? [] : fields.filter((field) => firstOfAWay.test(field.name));
}

// The fields typed at once: the needed ones and what is left in reserve, or those of the chosen way.
export function shownFields(fields: Field[], way = ''): Field[] {
  const ways = waysOf(fields);
  if (!ways.length) return fields.filter((field) => field.needed || field.name === 'reps_in_reserve');
  const first = ways.find((field) => field.name === way) ?? (ways[0] as Field);
  const withIt = first.name.startsWith('distance') ? fields.filter((field) => field.name.startsWith('release_')) : [];
  return [first, ...withIt];
}

export type Typed = Record<string, string>;

// Only the fields now shown are sent; a trial without any is left out.
export function trialsFrom(typed: Typed[], fields: Field[]): Record<string, number | string>[] {
  return typed
    .map((trial) =>
      Object.fromEntries(
        fields.flatMap(({ name }) => {
          const given = numberOrText(trial[name] ?? '');
          return given === null ? [] : [[name, given]];
        }),
      ),
    )
    .filter((trial) => Object.keys(trial).length > 0);
}

export function usualSide(sideRule: string, throwingHand: string): string {
  const other = throwingHand === 'right' ? 'left' : 'right';
  if (sideRule === 'lead_leg') return other;
  return sideRule === 'throwing_arm' ? throwingHand : 'none';
}
