// What is chosen on the page, and the question it makes. Of two settings that decide the same thing only one goes out:
// balance solves the other (engine/body_mechanics/setup.h).
import { numberOrText } from '../../quantities/typed';
import type { Query, ShownSetting } from './solved';

export interface Chosen {
  lift: string;
  hold: string; // '': the lift's usual one
  load: number;
  given: Record<string, number>; // by the request's field
}
export interface Person { // typed, when no athlete is named
  sex: string;
  stature: string;
  mass: string;
}
export interface Sought {
  want: string;
  wanted: string;
  vary: string;
}

export function partners(lift: string): string[][] {
  if (lift.endsWith('deadlift')) return [['shin_lean', 'knee']];
  return [['trunk_lean', 'shin_lean'], ['thigh', 'clearance', 'knee']];
}

// Gives one setting a value, and leaves to balance what it decides with.
export function setOne(given: Record<string, number>, settings: ShownSetting[], lift: string, key: string, value: number): Record<string, number> {
  const group = partners(lift).find((each) => each.includes(key)) ?? [];
  const field = settings.find((each) => each.key === key)?.field;
  const left = Object.entries(given).filter(([name]) => !settings.some((each) => each.field === name && each.key !== key && group.includes(each.key)));
  return { ...Object.fromEntries(left), ...(field ? { [field]: value } : {}) };
}

// One step up or down, onto the slider's own marks, inside its ends.
export function stepped(setting: ShownSetting, value: number, by: 1 | -1): number {
  const marks = (value - setting.low) / setting.step;
  const next = by > 0 ? Math.floor(marks + 1e-6) + 1 : Math.ceil(marks - 1e-6) - 1;
  return Math.min(setting.high, Math.max(setting.low, Number((setting.low + next * setting.step).toFixed(6))));
}

export function personQuery(athlete: string, person: Person, units: { length: string; mass: string }): Query {
  if (athlete) return { athlete };
  const typed: [string, string][] = [[`stature_${units.length}`, person.stature], [`body_mass_${units.mass}`, person.mass]];
  return { ...(person.sex ? { sex: person.sex } : {}), ...Object.fromEntries(typed.flatMap(([field, text]) => {
    const value = numberOrText(text);
    return value === null ? [] : [[field, value]];
  })) };
}

export function setupQuery(who: Query, chosen: Chosen, massUnit: string, sought?: Sought): Query {
  const nothing = chosen.hold === 'body' || (chosen.lift === 'pull_up' && !chosen.hold);
  const query: Query = { ...who, lift: chosen.lift, ...(chosen.hold ? { hold: chosen.hold } : {}), ...(nothing ? {} : { [`load_${massUnit}`]: chosen.load }), ...chosen.given };
  if (!sought) return query;
  const wanted = sought.want === 'start_angle' ? null : numberOrText(sought.wanted);
  return { ...query, want: sought.want, ...(wanted === null ? {} : { wanted }), vary: sought.vary };
}

// Which settings a search may vary, by the names the server gives them.
const varied: Record<string, string> = { stance: 'stance', pad: 'pad_height', box: 'box_height', handle: 'handle_height', trunk_lean: 'trunk_lean', shin_lean: 'shin_lean' };
export function variable(settings: ShownSetting[]): string[] {
  const of = settings.filter((each) => each.how !== 'solved').map((each) => varied[each.key]);
  return [...new Set([...of.filter((each) => each !== undefined), 'load'])];
}

export const inMetres = (value: number, unit: string) => value * (unit === 'in' ? 0.0254 : unit === 'cm' ? 0.01 : 1);
