// A practice as it is typed, as the server takes it, and as this device keeps it until it is kept there.
import { numberOrText } from '../../quantities/typed';

export interface Row {
  threw: boolean;
  none: boolean;
  count: string; // when different
  sore: string;
}
export interface Practice {
  date: string;
  setting: string;
  count: string;
  effort: string;
  distance: string;
  ball: string;
  units: string;
  group: string; // a team or a sport ticked as a whole; '' when none
  others: boolean; // names outside the group are shown too
  rows: Record<string, Row>;
}
export interface Thrower {
  athlete: string;
  name: string;
  sport: string;
  teams: string[];
}

export const emptyRow = (): Row => ({ threw: false, none: false, count: '', sore: '' });
export const newPractice = (date: string, units: string): Practice => ({ date, setting: '', count: '', effort: '', distance: '', ball: '', units, group: '', others: false, rows: {} });

// "everybody", a sport, or a team: the server writes "Upland Terns, by the Softball clinical guidance".
export const belongs = (each: Thrower, group: string): boolean =>
  group === 'everybody' || each.sport === group || each.teams.some((team) => team.startsWith(`${group}, by `));

export const shownThrowers = (all: Thrower[], practice: Practice): Thrower[] =>
  practice.group && !practice.others ? all.filter((each) => belongs(each, practice.group)) : all;

// Those said of, in the order of the list; a thrower neither ticked nor without throws is left unknown.
export function saidOf(all: Thrower[], practice: Practice): Thrower[] {
  return shownThrowers(all, practice).filter((each) => practice.rows[each.athlete]?.threw || practice.rows[each.athlete]?.none);
}

function lineOf(athlete: string, row: Row): Record<string, unknown> {
  const sore = row.sore.trim() ? { soreness_after: numberOrText(row.sore) } : {};
  if (row.none) return { athlete, count: 0, ...sore };
  return { athlete, ...(row.count.trim() ? { count: numberOrText(row.count) } : {}), ...sore };
}

export function requestOf(all: Thrower[], practice: Practice): Record<string, unknown> {
  const us = practice.units === 'us';
  const numbers: [string, string][] = [
    ['effort_percent', practice.effort],
    [us ? 'distance_ft' : 'distance_m', practice.setting === 'long_toss' ? practice.distance : ''],
    [us ? 'ball_mass_lb' : 'ball_mass_kg', practice.setting === 'ball_drill' ? practice.ball : ''],
  ];
  return {
    date: practice.date,
    setting: practice.setting,
    count: numberOrText(practice.count),
    ...Object.fromEntries(numbers.filter(([, text]) => text.trim()).map(([name, text]) => [name, numberOrText(text)])),
    lines: saidOf(all, practice).map((each) => lineOf(each.athlete, practice.rows[each.athlete] ?? emptyRow())),
  };
}

// "lines[3].count" is about the fourth line that was sent.
export function lineRefused(field: string): number | null {
  const found = /^lines\[(\d+)\]/.exec(field);
  return found ? Number(found[1]) : null;
}
