// How a line's load is set: large what is read at a glance, smaller how it is made or found.
import type { Line } from './around';

type Load = Pick<Line, 'load' | 'load_unit' | 'load_words'>;

// What is lifted, all together, where plates a side do not say it at a glance; '' where the words name the whole load.
export function total(line: Load): string {
  return line.load != null && line.load_words.includes('a side') ? `${Number(line.load.toFixed(1))} ${line.load_unit}` : '';
}

// "6 lb ball" is read at a glance; "first week: find the stack setting that leaves 3 in reserve" is a sentence.
export function isSentence(line: Load): boolean {
  return line.load_words.length > 30;
}
