// A table of limits as words: which columns it has, and what one cell says. Every number is the server's.
import type { Answer } from '../../api/ask';
import { pitchRulesWords as say } from '../../words/pitch_rules';

export type Table = Answer<'/api/pitch_rules', 'get'>['tables'][number];
export type Row = Table['rows'][number];

const plain = (value: number | null | undefined) => (value == null ? '' : String(value));
const joined = (parts: string[]) => parts.filter(Boolean).join('; ');

// What a cell says; empty: the table has no such entry.
export const cells: Record<string, (row: Row) => string> = {
  daily_max: (row) => plain(row.daily_max),
  rest: (row) => row.rest_to.map((to, days) => say.rest(days, to)).join(', '),
  game_max: (row) => plain(row.game_max),
  third_day_max: (row) => (row.third_day_max === 0 ? say.thirdNone : plain(row.third_day_max)),
  most_days_running: (row) => plain(row.most_days_running),
  yearly_innings: (row) => plain(row.yearly_innings),
  second_game: (row) => say.secondGame[row.second_game ?? ''] ?? '',
  last_batter: (row) => say.lastBatter[row.last_batter ?? ''] ?? '',
  catching: (row) =>
    joined([row.no_catching_from == null ? '' : say.noCatching(row.no_catching_from), row.no_pitching_caught == null ? '' : say.noPitching(row.no_pitching_caught)]),
  months: (row) => (row.months_off == null ? '' : say.months(row.months_off, row.months_off_running, row.months_off_from ?? 'pitching')),
};

// The columns in which some row says something, and the names of the others.
export function columnsOf(rows: Row[]): { shown: string[]; silent: string[] } {
  const all = Object.keys(cells);
  const shown = all.filter((column) => rows.some((row) => cells[column]?.(row)));
  return { shown, silent: all.filter((column) => !shown.includes(column)).map((column) => (say.columns[column] ?? column).toLowerCase()) };
}

// What the published row of the same ages says in this column, when it says another thing.
export function publishedOtherwise(row: Row, published: Row[], column: string): string {
  const same = published.find((each) => each.age_low === row.age_low && each.age_high === row.age_high);
  const was = same ? (cells[column]?.(same) ?? '') : '';
  return same && was !== cells[column]?.(row) ? was || say.none : '';
}

// Each note once, with the ages it stands for.
export function notesOf(rows: Row[]): { ages: string[]; note: string; all: boolean }[] {
  const notes = [...new Set(rows.map((row) => row.note ?? '').filter(Boolean))];
  return notes.map((note) => {
    const having = rows.filter((row) => row.note === note);
    return { note, all: having.length === rows.length, ages: having.map((row) => say.years(row.age_low, row.age_high)) };
  });
}
