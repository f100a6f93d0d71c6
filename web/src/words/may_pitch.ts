// The question "may she pitch on Thursday?", wherever it is asked.
import { longDay } from '../quantities/calendar_days';

export function askedOf(name: string, sport: string, day: string): string {
  return `May ${name} ${sport === 'javelin' ? 'throw' : 'pitch'} on ${longDay(day)}?`;
}

export const dayChoiceWords = {
  otherDay: 'or a date',
};

export const mayPitchWords: Record<string, string> = { yes: 'Yes', no: 'No', cannot_tell: 'Cannot tell' };

export const askWords = {
  title: 'May a thrower pitch?',
  who: 'Thrower',
  placeholder: 'a few letters of the name',
  day: 'On which day',
  which: 'Which one?',
  nobody: (typed: string) => `Nobody here is called “${typed}”.`,
  more: (left: number) => `and ${left} more; type another letter`,
  why: (name: string) => `The arm of ${name}: why, and every throw behind it`,
  staff: 'Everybody on one list',
};

// "Yes, at most 100 pitches ..." as its first word and the rest, nothing lost.
export function splitAnswer(sentence: string): { word: string; rest: string } {
  const word = /^(Yes|No|Cannot tell)\b[,:]?/.exec(sentence)?.[0] ?? '';
  return { word, rest: sentence.slice(word.length) };
}

// Of a sentence that stands in a table beside the day, the most and the next day: what those columns say already is left
// out, the rest stays as the server said it.
export function whyBeside(sentence: string): string {
  const rest = sentence
    .replace(/^Yes, at most \d+ pitches on [A-Z][a-z]+ \d{4}-\d\d-\d\d, /, '')
    .replace(/^(No, not on [A-Z][a-z]+ \d{4}-\d\d-\d\d, |No: |Cannot tell: )/, '')
    .replace(/ Next on [A-Z][a-z]+ \d{4}-\d\d-\d\d\.(?= |$)/, '');
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
