import { expect, it } from 'vitest';
import { cornerLines, findParameters } from './find_parameters';

const parameters = [
  { group: 'FORCE_PLATFORM', name: 'TYPE', value: '2', description: '' },
  { group: 'ANALOG', name: 'RATE', value: '1000', description: 'samples a second' },
  { group: 'POINT', name: 'RATE', value: '200', description: '' },
];
const names = (typed: string) => findParameters(parameters, typed).map((each) => `${each.group}:${each.name}`);

it('finds by any of the words, whatever their order and letters', () => {
  expect(names('rate')).toEqual(['ANALOG:RATE', 'POINT:RATE']);
  expect(names('analog:rate')).toEqual(['ANALOG:RATE']);
  expect(names('second rate')).toEqual(['ANALOG:RATE']);
  expect(names('')).toHaveLength(3);
  expect(names('marker')).toEqual([]);
});
it('writes a corner a line', () => expect(cornerLines([0, 0.4, 0, -0.6, 0.4, 0])).toEqual(['0.000, 0.400, 0.000', '\u22120.600, 0.400, 0.000']));
