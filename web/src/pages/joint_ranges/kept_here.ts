// What outlives a change of thrower: rater and tool, on this device and for one day only (tomorrow another person may
// measure), and what was typed but not saved, while the page is open.
import { emptyReadings, type Readings } from './angle_entry';

export interface Measuring {
  rater: string;
  tool: string;
}
const place = 'amentum joint ranges';

export function keptMeasuring(today: string): Measuring {
  try {
    const kept = JSON.parse(localStorage.getItem(place) ?? '{}') as Partial<Measuring> & { day?: string };
    if (kept.day === today) return { rater: kept.rater ?? '', tool: kept.tool ?? '' };
  } catch {
    // no storage, or not ours: nothing is kept
  }
  return { rater: '', tool: '' };
}

export function keepMeasuring(today: string, measuring: Measuring): void {
  try {
    localStorage.setItem(place, JSON.stringify({ day: today, ...measuring }));
  } catch {
    // no storage: typed again for the next thrower
  }
}

const drafts = new Map<string, Readings>();
export const draftOf = (key: string): Readings => structuredClone(drafts.get(key) ?? emptyReadings());
export const keepDraft = (key: string, readings: Readings): void => void drafts.set(key, readings);
export const dropDraft = (key: string): void => void drafts.delete(key);
