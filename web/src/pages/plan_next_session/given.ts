// What the page of the next session hands to its parts.
import type { Answer } from '../../api/ask';
import type { Waiting } from '../../outbox/outbox';

export type Next = Answer<'/api/plan_next_session', 'get'>;
export type Line = Next['lines'][number];

export const oneSided = (line: Line) => line.dose.endsWith('a side');

export const setsWaiting = (entries: Waiting[], block: string, exercise: string, date: string): number =>
  entries.filter(({ route, body }) => route === '/api/log_set' && body.block === block && body.date === date && body.exercise === exercise).length;

export const hasLeft = (before: Waiting[], now: Waiting[]): boolean => before.some((each) => !now.some((other) => other.id === each.id));

// The session with the sets that wait on this device counted as done: without the server, too, the next set comes next.
// Its load stays as it was; only the server works it out anew.
export function withWaiting(next: Next, entries: Waiting[]): Next {
  const waits = (line: Line) => setsWaiting(entries, next.block, line.exercise, next.today);
  return { ...next, lines: next.lines.map((line) => ({ ...line, sets_done: line.sets_done + waits(line), sets_left: Math.max(0, line.sets_left - waits(line)) })) };
}

const reasons = (line: Line) => line.why.map((each) => each.sentence).join(' ');

// What most lines would say again, if at least three do: said once for all of them.
export function saidOfMost(lines: Line[]): string | undefined {
  const count = (line: Line) => lines.filter((each) => reasons(each) === reasons(line)).length;
  const most = lines.reduce((a: Line | undefined, b) => (a && count(a) >= count(b) ? a : b), undefined);
  return most && count(most) >= 3 ? reasons(most) : undefined;
}
export const saysMore = (line: Line, ofMost: string | undefined) => reasons(line) !== ofMost;
