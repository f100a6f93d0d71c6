import { describe, expect, it } from 'vitest';
import { findNames, findThrowers, lineAfterKey } from './find_throwers';

const throwers = [
  { name: 'Zoë Castellane', sport: 'baseball', role: 'pitcher', level: 'college' },
  { name: 'Marisol Quay', sport: 'softball', role: 'pitcher', level: 'college' },
  { name: 'Hugo Sandpiper', sport: 'baseball', role: 'fielder', level: 'youth' },
];
const names = (typed: string, sport = '') => findThrowers(throwers, typed, sport).map((each) => each.name);

describe('finding throwers', () => {
  it('shows everybody when nothing is typed', () => expect(names(' ')).toHaveLength(3));
  it('wants every word typed to begin a word of the line', () => {
    expect(names('coll soft')).toEqual(['Marisol Quay']);
    expect(names('uay')).toEqual([]);
  });
  it('finds without accents and case', () => expect(names('ZOE')).toEqual(['Zoë Castellane']));
  it('keeps to the sport chosen', () => expect(names('', 'baseball')).toEqual(['Zoë Castellane', 'Hugo Sandpiper']));
});

describe('whom letters can mean', () => {
  const people = [{ athlete: 'a', name: 'Ona Reyes' }, { athlete: 'b', name: 'Ona Reyes Quay' }, { athlete: 'c', name: 'Zoë Quay' }];
  const meant = (typed: string) => findNames(people, typed).map((each) => each.athlete).join('');
  it('is nobody before anything is typed', () => expect(meant(' ')).toBe(''));
  it('is everybody whose name has such words', () => expect([meant('quay'), meant('zoe'), meant('x')]).toEqual(['bc', 'c', '']));
  it('is one when a name is typed whole', () => expect(meant('ona reyes')).toBe('a'));
});

describe('moving by keys', () => {
  it('goes down to the last line and stays there', () => {
    expect(lineAfterKey('ArrowDown', -1, 3)).toBe(0);
    expect(lineAfterKey('ArrowDown', 2, 3)).toBe(2);
  });
  it('goes up into the search field', () => expect(lineAfterKey('ArrowUp', 0, 3)).toBe(-1));
  it('jumps to the ends only from a line', () => {
    expect(lineAfterKey('End', 0, 3)).toBe(2);
    expect(lineAfterKey('Home', -1, 3)).toBeNull();
  });
  it('leaves other keys and an empty list alone', () => {
    expect(lineAfterKey('a', 1, 3)).toBeNull();
    expect(lineAfterKey('ArrowDown', -1, 0)).toBeNull();
  });
});
