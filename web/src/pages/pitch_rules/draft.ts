// A table being written: text as it was typed, how it goes into the request, and which cell a refusal is about.
import type { Refusal } from '../../api/ask';
import { numberOrText } from '../../quantities/typed';
import type { Row, Table } from './table';

export const mostBands = 6;
export const firstFields = ['age_low', 'age_high', 'daily_max', ...Array.from({ length: mostBands }, (_, k) => `rest_${k}_to`)];
export const otherFields = ['game_max', 'third_day_max', 'most_days_running', 'yearly_innings', 'no_catching_from', 'no_pitching_caught', 'months_off', 'months_off_running'];
export const choiceFields = ['months_off_from', 'second_game', 'last_batter'];

export type DraftRow = Record<string, string>;
export interface Draft {
  fields: Record<string, string>; // organisation, sport, year, age_on, source, author, reason
  rows: DraftRow[];
}

const typed = (value: unknown) => (value == null ? '' : String(value));

export function draftRow(row: Row | undefined): DraftRow {
  const draft: DraftRow = {};
  for (const field of [...firstFields, ...otherFields, ...choiceFields, 'note']) draft[field] = typed((row as Record<string, unknown> | undefined)?.[field]);
  for (let k = 0; k < mostBands; k += 1) draft[`rest_${k}_to`] = typed(row?.rest_to[k]);
  draft['months_off_from'] ||= 'pitching';
  draft['second_game'] ||= 'unsaid';
  draft['last_batter'] ||= 'unsaid';
  return draft;
}

export function draftOf(table: Table): Draft {
  const { organisation, sport, age_on } = table;
  return {
    fields: { organisation, sport, year: String(table.year), age_on, source: table.sources.join(', '), author: '', reason: '' },
    rows: table.rows.map(draftRow),
  };
}

// Bands after the last one given are left out; an empty one before it goes as null, which the server refuses by name.
function requestRow(row: DraftRow): Record<string, unknown> {
  const bands = Array.from({ length: mostBands }, (_, k) => numberOrText(row[`rest_${k}_to`] ?? ''));
  while (bands.length && bands.at(-1) === null) bands.pop();
  const numbers = Object.fromEntries(['age_low', 'age_high', 'daily_max', ...otherFields].map((field) => [field, numberOrText(row[field] ?? '')]));
  const words = Object.fromEntries([...choiceFields, 'note'].map((field) => [field, row[field] || null]));
  return { ...numbers, rest_to: bands, ...words };
}

export function requestOf(draft: Draft, published: boolean) {
  const { organisation = '', sport = '', year = '', age_on = '', source = '', author = '', reason = '' } = draft.fields;
  const who = { organisation, sport, author, reason };
  return published ? { ...who, rows: [], published } : { ...who, year: numberOrText(year), age_on: age_on || null, source: source || null, rows: draft.rows.map(requestRow) };
}

export interface Place {
  row: number | null; // null: a field of the whole table
  field: string;
}

// A refusal names its cell by place ("rows[2].daily_max", "rows.2.rest_to.1") or by ages ("13 to 14 years, rest_1_to").
export function placeOfRefusal(refusal: Refusal | undefined, draft: Draft): Place | null {
  const name = refusal?.field ?? '';
  const placed = /^rows[.[](\d+)\]?\.(\w+)(?:[.[](\d+))?/.exec(name);
  if (placed) {
    const [, row, field = '', band] = placed;
    return { row: Number(row), field: field === 'rest_to' ? `rest_${band ?? 0}_to` : field };
  }
  const aged = /^(\d+) to (\d+) years, (\w+)$/.exec(name);
  const field = aged ? (aged[3] ?? '') : name;
  const whole: Record<string, string> = { age_month: 'age_on', age_day: 'age_on' };
  if ((whole[field] ?? field) in draft.fields) return { row: null, field: whole[field] ?? field };
  if (!aged) return null;
  const having = draft.rows.flatMap((row, i) => (row['age_low'] === aged[1] && row['age_high'] === aged[2] ? [i] : []));
  const row = field === 'age_low' ? having.at(-1) : having[0]; // of two rows for the same ages the later one is at fault
  return row === undefined ? null : { row, field };
}
