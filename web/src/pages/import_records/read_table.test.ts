import { expect, it } from 'vitest';
import { readTable } from './read_table';

const bytes = (...all: number[]) => new Uint8Array(all);

it('reads UTF-8, and drops a byte order mark', () => {
  expect(readTable(bytes(0x4a, 0x6f, 0x73, 0xc3, 0xa9))).toBe('José'); // RFC 3629, section 3: U+00E9 is C3 A9
  expect(readTable(bytes(0xef, 0xbb, 0xbf, 0x61))).toBe('a'); // RFC 3629, section 6
});
it('refuses the same name from Windows-1252 and from UTF-16, instead of losing its letter', () => {
  expect(readTable(bytes(0x4a, 0x6f, 0x73, 0xe9))).toBeNull();
  expect(readTable(bytes(0xff, 0xfe, 0x4a, 0x00, 0xe9, 0x00))).toBeNull();
});
