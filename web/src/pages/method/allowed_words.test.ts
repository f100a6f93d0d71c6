import { describe, expect, it } from 'vitest';
import { asCommand, filledIn, readAllowed, significant } from './allowed_words';

// The sentences are those the program writes for one_rep_max, maturity_offset, speed_in_metres_per_second and makeable_load.
describe('reading what is allowed', () => {
  it('makes choices of names', () => {
    expect(readAllowed('female, male')).toEqual({ choices: ['female', 'male'], range: 'female, male', otherwise: '' });
    expect(readAllowed('mph, km/h, m/s').choices).toEqual(['mph', 'km/h', 'm/s']);
  });
  it('keeps what is taken when the field is left out', () => {
    const read = readAllowed('epley, brzycki; when left out epley');
    expect(read.choices).toEqual(['epley', 'brzycki']);
    expect(read.otherwise).toBe('epley');
  });
  it('leaves ranges and lists of numbers to be typed', () => {
    expect(readAllowed('-150 to 250').choices).toEqual([]);
    expect(readAllowed('numbers with commas between, each 0.01 to 50').choices).toEqual([]);
    expect(readAllowed('0 to 60; when left out 0')).toEqual({ choices: [], range: '0 to 60', otherwise: '0' });
  });
});

it('sends only what was filled in', () => {
  expect(filledIn({ load_kg: ' 100 ', reps: '', equation: undefined })).toEqual({ load_kg: '100' });
});

it('writes the command with quotes where a shell needs them', () => {
  expect(asCommand('one_rep_max', { load_kg: '100', reps: '10' })).toBe('amentum method one_rep_max load_kg=100 reps=10');
  expect(asCommand('makeable_load', { pairs_kg: '5, 10' })).toBe("amentum method makeable_load pairs_kg='5, 10'");
});

it('shows six significant figures', () => {
  expect(significant(133.33333333333331)).toBe('133.333');
  expect(significant(-0.1 - 0.2)).toBe('\u22120.3');
  expect(significant(1234567)).toBe('1234570');
  expect(significant(5.712976, 2)).toBe('5.7');
});
