// What the form holds of one rack, and how it goes into the request.
import { numberOrText } from '../../quantities/typed';

export interface Asked {
  key: number;
  from: 'list' | 'session';
  name: string;
  means: string;
  item: string;
  loads: string;
  thrower: string;
  week: string;
  session: string;
}

export function blank(key: number): Asked {
  return { key, from: 'list', name: '', means: 'straight_bar', item: '', loads: '', thrower: '', week: '1', session: '1' };
}

export const prefilled = (unit: string): string => (unit === 'lb' ? '135 185 225 205' : '60 80 100 90');

// In a gym of another unit the same numbers are other loads: only those nobody typed have a counterpart.
export function loadsAfter(loads: string, before: string, now: string): string {
  if (before === now) return loads;
  return loads === prefilled(before) ? prefilled(now) : '';
}

// Loads stand apart by spaces or semicolons, so that a decimal comma stays one. What is no number goes on as typed.
export function loadsOf(text: string): (number | string)[] {
  return text.split(/[\s;]+/).filter(Boolean).map((each) => numberOrText(each.replace(/,$/, '')) ?? each);
}

export function rackOf(asked: Asked, unit: string): Record<string, unknown> {
  const name = asked.name.trim() ? { name: asked.name.trim() } : {};
  if (asked.from === 'session')
    return { ...name, block: asked.thrower, week: numberOrText(asked.week), session: numberOrText(asked.session) };
  return { ...name, means: asked.means, ...(asked.item ? { item: asked.item } : {}), [unit === 'lb' ? 'loads_lb' : 'loads_kg']: loadsOf(asked.loads) };
}
