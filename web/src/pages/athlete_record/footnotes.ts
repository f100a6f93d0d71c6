// The same long remark on many lines is said once below the table and marked a, b, c on the lines.
export interface Footnotes {
  notes: { letter: string; text: string }[];
  letterOf: (text: string) => string;
}

export function footnotes(texts: string[]): Footnotes {
  const different = [...new Set(texts.filter(Boolean))];
  const notes = different.map((text, i) => ({ letter: String.fromCharCode(97 + i), text }));
  return { notes, letterOf: (text) => notes.find((note) => note.text === text)?.letter ?? '' };
}
