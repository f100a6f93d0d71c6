// One entry as the server takes it, from what was tapped and typed; and those of this device, for the question of the day
// after, which is the same entry once more with how the arm is.
import { keepOnDevice, onDevice } from '../../outbox/on_device';
import { numberOrText } from '../../quantities/typed';

export interface Typed {
  setting: string;
  count: string;
  effort: string;
  before: string;
  after: string;
  speed: string;
  distance: string;
  ball: string;
  note: string;
  innings: string;
  team: string;
  game: string;
  lastBatter: string;
  caught: string;
}
export type Entry = { athlete: string; date: string; setting: string; count: number | string | null; occasion?: number } & Record<string, unknown>;

export const nothingTyped = (): Typed => ({ setting: '', count: '', effort: '', before: '', after: '', speed: '', distance: '', ball: '', note: '', innings: '', team: '', game: '', lastBatter: '', caught: '' });

export function entryFrom(athlete: string, date: string, typed: Typed, units: string): Entry {
  const us = units === 'us';
  const game = typed.setting === 'game', field = typed.setting === 'fielding';
  const numbers: Record<string, string> = {
    effort_percent: typed.effort,
    soreness_before: typed.before,
    soreness_after: typed.after,
    [us ? 'speed_mph' : 'speed_ms']: typed.speed,
    [us ? 'distance_ft' : 'distance_m']: typed.distance,
    [us ? 'ball_mass_lb' : 'ball_mass_kg']: typed.ball,
    ...(game ? { before_last_batter: typed.lastBatter } : {}),
  };
  const texts: Record<string, string> = {
    note: typed.note,
    ...(game ? { innings: typed.innings, team: typed.team } : {}),
    ...(game || field ? { game: typed.game, innings_caught: typed.caught } : {}),
  };
  const given = [
    ...Object.entries(numbers).filter(([, text]) => text.trim()).map(([name, text]) => [name, numberOrText(text)]),
    ...Object.entries(texts).filter(([, text]) => text.trim()).map(([name, text]) => [name, text.trim()]),
  ];
  return { athlete, date, setting: typed.setting, count: numberOrText(typed.count), ...Object.fromEntries(given) };
}

const place = (athlete: string) => `throws of ${athlete}`;
const most = 20; // entries: some days of them
const sameEntry = (a: Entry, b: Entry) => a.date === b.date && a.setting === b.setting && (a.occasion ?? 1) === (b.occasion ?? 1);

export function rememberEntry(entry: Entry): void {
  const { corrected_by: _, reason: __, ...kept } = entry;
  const others = (onDevice<Entry[]>(place(entry.athlete)) ?? []).filter((each) => !sameEntry(each, entry));
  keepOnDevice(place(entry.athlete), [...others, kept].slice(-most));
}

// Those of a day that were thrown, written on this device and not yet asked about.
export function openEntriesOf(athlete: string, date: string): Entry[] {
  return (onDevice<Entry[]>(place(athlete)) ?? []).filter((each) => each.date === date && each.setting !== 'none' && each['soreness_next_day'] === undefined);
}
