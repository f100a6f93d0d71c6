// A week's sheet is one printed page (A4 or Letter), read at arm's length: the fewer its lines, the larger they are set.
// Sets, repetitions, loads and rest are never below 11 points; when a week is full, the words beside them shrink first.
// Sizes tried in print on both papers with the longest lines of the demo; a typographic choice, no source.
export interface PrintSize {
  size: string; // of sets, repetitions, loads, rest
  made: string; // of the plates a load is made of, or the sentence that says how it is found
  words: string; // of names and what is left in reserve
  name: string; // width of the names' column
  gap: string;
  leading: number; // height of a line over its type
}

export function printSize(lines: number): PrintSize {
  if (lines <= 12) return { size: '14pt', made: '13pt', words: '13pt', name: '36%', gap: '0.3rem', leading: 1.12 };
  if (lines <= 18) return { size: '13pt', made: '12pt', words: '11.5pt', name: '36%', gap: '0.16rem', leading: 1.12 };
  if (lines <= 24) return { size: '12pt', made: '11pt', words: '10pt', name: '36%', gap: '0.1rem', leading: 1.12 };
  if (lines <= 28) return { size: '11pt', made: '9pt', words: '8.5pt', name: '34%', gap: '0.02rem', leading: 1.1 };
  return { size: '11pt', made: '7.5pt', words: '7.2pt', name: '27%', gap: '0', leading: 1.02 };
}
