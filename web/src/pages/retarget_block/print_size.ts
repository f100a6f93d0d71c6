// A week of two gyms is one printed page (A4 or Letter): the more its lines and sentences, the smaller they are set.
// Sizes tried in print on both papers with the demo's fullest week; a typographic choice, no source.
import type { Answer } from '../../api/ask';

type Session = Answer<'/api/retarget_block', 'post'>['sessions'][number];

const lettersOfLine = 80; // of the right column, at the middle size

export function printSize(sessions: Session[]): string {
  const rows = sessions.flatMap((session) => session.lines).reduce((sum, line) => {
    const said = line.loss.length + line.to_do.length;
    return sum + 1.25 + Math.ceil(said / lettersOfLine);
  }, 1.5 * sessions.length);
  return rows <= 30 ? '10.5pt' : rows <= 42 ? '8.8pt' : rows <= 56 ? '7.4pt' : rows <= 70 ? '6.5pt' : '5.8pt';
}
