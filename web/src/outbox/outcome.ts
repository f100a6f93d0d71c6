// What the server made of a waiting entry. Only "taken" lets it go: a question ("Keep it?") comes with status 200 too,
// but nothing has been saved then.
// "read" is what a person must see of an entry that was taken while nobody looked.
export type Outcome = { kind: 'taken'; read: string[] } | { kind: 'unreachable' } | { kind: 'refused' | 'question'; sentence: string };

interface Said {
  question?: string;
  saved?: boolean;
  refusal?: { sentence?: string };
  findings?: { sentence: string; what_to_do: string }[]; // of a set, of throws
  lines?: { name: string; stops: string[] }[]; // of a practice
  pain?: unknown;
  words?: string[] | string;
}

// Of pain everything is read: what stops, and whom to tell.
function mustBeRead(said: Said): string[] {
  const found = (said.findings ?? []).map((each) => `${each.sentence} ${each.what_to_do}`.trim());
  const stops = (said.lines ?? []).flatMap((line) => line.stops.map((stop) => `${line.name}: ${stop}`));
  return [...found, ...stops, ...(said.pain && Array.isArray(said.words) ? said.words : [])];
}

export function outcomeOf(ok: boolean, answer: unknown): Outcome {
  const said = (answer ?? {}) as Said;
  if (!ok) return { kind: 'refused', sentence: said.refusal?.sentence ?? 'The server refused this entry.' };
  if (said.saved === false && said.question) return { kind: 'question', sentence: said.question };
  return { kind: 'taken', read: mustBeRead(said) };
}
