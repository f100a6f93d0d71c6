// Which throwers a search and a sport leave, and where an arrow key leads.
export interface Findable {
  name: string;
  sport: string;
  role: string;
  level: string;
}

// Each word typed must begin some word of the line, without regard to case or accents: "mar soft" finds Marisol Quay.
export function findThrowers<T extends Findable>(throwers: T[], typed: string, sport: string): T[] {
  const wanted = wordsOf(typed);
  return throwers.filter((thrower) => {
    if (sport && thrower.sport !== sport) return false;
    const words = wordsOf(`${thrower.name} ${thrower.sport} ${thrower.role} ${thrower.level}`);
    return wanted.every((part) => words.some((word) => word.startsWith(part)));
  });
}

export interface Named {
  athlete: string;
  name: string;
}

// Whom the letters typed can mean: a name typed whole means nobody else; nothing typed means nobody.
export function findNames(throwers: Named[], typed: string): Named[] {
  const wanted = wordsOf(typed);
  if (!wanted.length) return [];
  const whole = throwers.filter((each) => wordsOf(each.name).join(' ') === wanted.join(' '));
  if (whole.length) return whole;
  return throwers.filter((each) => wanted.every((part) => wordsOf(each.name).some((word) => word.startsWith(part))));
}

function wordsOf(text: string): string[] {
  const plain = text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.split(/[^\p{L}\p{N}]+/u).filter(Boolean);
}

// The line an arrow key leads to; -1 is the search field above the first line, null: the key means nothing here.
export function lineAfterKey(key: string, line: number, lines: number): number | null {
  if (!lines) return null;
  if (key === 'ArrowDown') return Math.min(line + 1, lines - 1);
  if (key === 'ArrowUp') return Math.max(line - 1, -1);
  if (line < 0) return null; // Home and End belong to the text in the search field
  if (key === 'Home') return 0;
  if (key === 'End') return lines - 1;
  return null;
}
