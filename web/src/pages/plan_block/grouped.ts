// What a page says of many lines at once: what a change did, and limits that bind several lines, said once.
import type { Block, Line, Session } from './around';

// What the last change did to one line of the sheet, by the block as it was before it: sets before (0: not there), or nothing.
export function setsBefore(before: Block | undefined, session: Session, line: Line): number | undefined {
  const was = before?.sessions.find((each) => each.week === session.week && each.session === session.session);
  if (!before || !was) return undefined;
  const sets = was.lines.find((each) => each.exercise === line.exercise)?.sets ?? 0;
  return sets === line.sets ? undefined : sets;
}

// Lines that stood in this session before the last change and are gone.
export function goneFrom(before: Block | undefined, session: Session): Line[] {
  const was = before?.sessions.find((each) => each.week === session.week && each.session === session.session);
  return (was?.lines ?? []).filter((each) => !session.lines.some((line) => line.exercise === each.exercise));
}

export interface Binding {
  words: string;
  names: string[]; // of the lines it holds back
}

// What one more set would meet, said once: under its session, or under the week when it binds in several sessions. What binds
// a line alone (its own most sets) stands in its why.
export function bindings(sessions: Session[]): { week: Binding[]; session: Record<number, Binding[]> } {
  const found = new Map<string, { sessions: Set<number>; names: Set<string> }>();
  for (const session of sessions)
    for (const line of session.lines)
      if (line.held_back && !line.held_back.startsWith(line.name)) {
        const group = found.get(line.held_back) ?? { sessions: new Set(), names: new Set() };
        group.sessions.add(session.session);
        group.names.add(line.name);
        found.set(line.held_back, group);
      }
  const bound: { week: Binding[]; session: Record<number, Binding[]> } = { week: [], session: {} };
  for (const [words, group] of found) {
    const binding = { words, names: [...group.names] };
    const [only] = group.sessions;
    if (group.sessions.size > 1 || only === undefined) bound.week.push(binding);
    else (bound.session[only] ??= []).push(binding);
  }
  return bound;
}

// What the guard rails found on this very line.
export function findingsOn(block: Block, session: Session, line: Line): Block['findings'] {
  return block.findings.filter((each) => each.week === session.week && each.session === session.session && each.order === line.order);
}

export interface SwapChoices {
  pattern: { exercise: string; name: string }[];
  quality: { exercise: string; name: string }[];
}

// What may stand in for an exercise: the same movement first, then what serves one of its qualities; not what stands there.
export function swapChoices(
  exercises: { exercise: string; name: string; pattern: string; qualities: string[] }[],
  exercise: string,
  standing: string[],
): SwapChoices {
  const given = exercises.find((each) => each.exercise === exercise);
  const others = exercises.filter((each) => each.exercise !== exercise && !standing.includes(each.exercise));
  const by = (a: { name: string }, b: { name: string }) => a.name.localeCompare(b.name);
  const pattern = others.filter((each) => each.pattern === given?.pattern).sort(by);
  const quality = others.filter((each) => each.pattern !== given?.pattern && each.qualities.some((one) => given?.qualities.includes(one))).sort(by);
  return { pattern, quality };
}

// All that may be added to a session, by movement; not what stands there.
export function byPattern<T extends { exercise: string; name: string; pattern: string }>(exercises: T[], standing: string[]): { pattern: string; exercises: T[] }[] {
  const free = exercises.filter((each) => !standing.includes(each.exercise)).sort((a, b) => a.name.localeCompare(b.name));
  return [...new Set(free.map((each) => each.pattern))].sort().map((pattern) => ({ pattern, exercises: free.filter((each) => each.pattern === pattern) }));
}
