import { describe, expect, test } from 'vitest';
import type { Block, Session } from './around';
import { bindings, byPattern, goneFrom, setsBefore, swapChoices } from './grouped';

const sheet = (lines: [string, number][]) => ({ week: 1, session: 2, lines: lines.map(([exercise, sets]) => ({ exercise, sets })) }) as unknown as Session;

describe('what a change did to the lines of a session', () => {
  const before = { sessions: [sheet([['row', 3], ['press', 2], ['raise', 2]])] } as unknown as Block;
  const after = sheet([['row', 3], ['press', 4], ['carry', 2]]);
  const was = after.lines.map((line) => setsBefore(before, after, line));
  test('the same sets are no change, other sets say what they were, a new line had none', () => expect(was).toEqual([undefined, 2, 0]));
  test('what stood there and is gone is named', () => expect(goneFrom(before, after).map((line) => line.exercise)).toEqual(['raise']));
  test('without a change nothing is marked', () => {
    expect(after.lines.map((line) => setsBefore(undefined, after, line))).toEqual([undefined, undefined, undefined]);
    expect(goneFrom(undefined, after)).toEqual([]);
  });
});

const session = (number: number, lines: [string, string][]) =>
  ({ session: number, lines: lines.map(([name, held_back]) => ({ name, held_back })) }) as unknown as Session;

describe('what holds back one more set is said where it binds', () => {
  test('in one session: under it; in several: under the week; nothing said, or of the line alone: nowhere', () => {
    const bound = bindings([session(1, [['Row', 'no minutes in session 1'], ['Press', 'costs more'], ['Slam', 'no minutes in session 1']]), session(2, [['Hinge', 'costs more'], ['Raise', ''], ['Slam', 'Slam has 5 sets, at most 4']])]);
    expect(bound.session).toEqual({ 1: [{ words: 'no minutes in session 1', names: ['Row', 'Slam'] }] });
    expect(bound.week).toEqual([{ words: 'costs more', names: ['Press', 'Hinge'] }]);
  });
});

describe('what may stand in for an exercise', () => {
  const exercises = [
    { exercise: 'row', name: 'Row', pattern: 'pull', qualities: ['pulling'] },
    { exercise: 'pull_up', name: 'Pull-up', pattern: 'pull', qualities: ['pulling', 'trunk'] },
    { exercise: 'carry', name: 'Carry', pattern: 'carry', qualities: ['pulling'] },
    { exercise: 'jump', name: 'Jump', pattern: 'jump', qualities: ['power'] },
  ];
  test('the same movement, then what serves one of its qualities; never itself', () => {
    const choices = swapChoices(exercises, 'row', ['row']);
    expect(choices.pattern.map((each) => each.exercise)).toEqual(['pull_up']);
    expect(choices.quality.map((each) => each.exercise)).toEqual(['carry']);
  });
  test('not what stands in the session already', () => {
    expect(swapChoices(exercises, 'row', ['row', 'carry', 'pull_up'])).toEqual({ pattern: [], quality: [] });
  });
  test('to be added: by movement, in order of name', () => {
    expect(byPattern(exercises, ['jump']).map((each) => [each.pattern, each.exercises.map((one) => one.name)])).toEqual([['carry', ['Carry']], ['pull', ['Pull-up', 'Row']]]);
  });
});
