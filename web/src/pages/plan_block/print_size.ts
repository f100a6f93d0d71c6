// A week's sheet is one printed page (A4 or Letter), read at arm's length: the fewer its lines, the larger they are set.
// Sizes tried in print on both papers with the longest lines of the demo; a typographic choice, no source.
export function printSize(lines: number): { size: string; gap: string } {
  if (lines <= 12) return { size: '13pt', gap: '0.3rem' };
  if (lines <= 20) return { size: '11pt', gap: '0.16rem' };
  if (lines <= 30) return { size: '9.2pt', gap: '0.04rem' };
  return { size: '8.5pt', gap: '0.03rem' };
}
