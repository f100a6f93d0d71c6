// @vitest-environment happy-dom
import { beforeEach, expect, test, vi } from 'vitest';
import { openEntriesOf, type Entry } from './entry';

const keep = vi.hoisted(() => vi.fn());
vi.mock('../../outbox/outbox', () => ({ keep }));
vi.stubGlobal('fetch', () => Promise.reject(new Error('the server is away')));
const { sendEntry } = await import('./send');
const entry: Entry = { athlete: 'casimir-holt', date: '2026-06-01', setting: 'javelin', count: 15 };

beforeEach(() => localStorage.clear());
test('what waits on the device is held', async () => {
  keep.mockResolvedValue(true);
  const sent = await sendEntry(entry, 'Casimir Holt, 15 throws');
  expect(sent.held).toBe(true);
  expect(openEntriesOf('casimir-holt', '2026-06-01')).toHaveLength(1);
});
test('on a device that keeps nothing it is said, not held, and not remembered as written', async () => {
  keep.mockResolvedValue(false);
  const sent = await sendEntry(entry, 'Casimir Holt, 15 throws');
  expect(sent.held).toBe(false);
  expect(sent.waits).not.toBe('');
  expect(openEntriesOf('casimir-holt', '2026-06-01')).toEqual([]);
});
