// What the server made of a waiting entry. Only "taken" lets it go: a question ("Keep it?") comes with status 200 too,
// but nothing has been saved then.
export type Outcome = { kind: 'taken' | 'unreachable' } | { kind: 'refused' | 'question'; sentence: string };

interface Said {
  question?: string;
  saved?: boolean;
  refusal?: { sentence?: string };
}

export function outcomeOf(ok: boolean, answer: unknown): Outcome {
  const said = (answer ?? {}) as Said;
  if (!ok) return { kind: 'refused', sentence: said.refusal?.sentence ?? 'The server refused this entry.' };
  if (said.saved === false && said.question) return { kind: 'question', sentence: said.question };
  return { kind: 'taken' };
}
