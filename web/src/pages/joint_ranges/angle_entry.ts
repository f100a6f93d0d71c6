// Typing readings of angles with chalky hands: number keys, which field comes next, what goes into a request. No angle is
// computed here: whether readings agree is the server's answer (method angle_trials).
import type { Answer } from '../../api/ask';
import { numberOrText } from '../../quantities/typed';
import { usualSide } from '../test_day/trials';

export type Side = 'left' | 'right';
export type Readings = Record<Side, string[]>;

export const emptyReadings = (): Readings => ({ left: ['', ''], right: ['', ''] });

// The side the test asks for comes first: throwing side, or lead leg.
export function sidesInOrder(sideRule: string, throwingHand: string): [Side, Side] {
  return usualSide(sideRule, throwingHand) === 'left' ? ['left', 'right'] : ['right', 'left'];
}

// One key pressed: a digit or a point is added, 'back' takes the last away. A second point is not typed.
export function pressed(text: string, key: string): string {
  if (key === 'back') return text.slice(0, -1);
  return key === '.' && /[.,]/.test(text) ? text : text + key;
}

export interface Field {
  side: Side;
  index: number;
}

// From a reading to the next of its side, then to the other side; undefined after the last.
export function nextField(order: Side[], readings: Readings, now: Field): Field | undefined {
  if (now.index + 1 < readings[now.side].length) return { side: now.side, index: now.index + 1 };
  const side = order[order.indexOf(now.side) + 1];
  return side ? { side, index: 0 } : undefined;
}

export function typedReadings(texts: string[]): (number | string)[] {
  return texts.map(numberOrText).filter((each) => each !== null);
}

// What the method is asked: only when every reading is a number.
export function agreementQuery(texts: string[], trialError: number, dayError: number): string | undefined {
  const angles = typedReadings(texts);
  if (!angles.length || angles.some((each) => typeof each !== 'number')) return undefined;
  const inputs = { angles_deg: angles.join(','), trial_error_deg: String(trialError), day_error_deg: String(dayError) };
  return new URLSearchParams({ name: 'angle_trials', inputs: JSON.stringify(inputs) }).toString();
}

export interface Agreement {
  of: string; // the readings it was asked for
  mean: number;
  error: number;
  spread: number;
  allowed: number;
  note: string; // empty when the readings agree
}

export function agreementOf(of: string, answer: Answer<'/api/method', 'get'>): Agreement | undefined {
  const { mean, spread, spread_allowed: allowed } = answer.outputs ?? {};
  if (!mean || !spread || !allowed) return undefined;
  return { of, mean: mean.value, error: mean.standard_error ?? 0, spread: spread.value, allowed: allowed.value, note: (answer.notes ?? []).join(' ') };
}

export function recordBody(who: { athlete: string; date: string; test: string; rater: string; tool: string }, side: Side, texts: string[], keep: boolean) {
  const { tool, ...rest } = who;
  return { ...rest, side, device: tool, trials: typedReadings(texts).map((angle) => ({ angle_deg: angle })), keep };
}
