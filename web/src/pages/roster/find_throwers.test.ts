import { describe, expect, it } from 'vitest';
import { findThrowers, lineAfterKey } from './find_throwers';

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
