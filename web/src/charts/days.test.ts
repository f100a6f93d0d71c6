import { describe, expect, it } from 'vitest';
import { dayNumber, dayWords, monthTicks } from './days';

describe('days', () => {
  it('count from 1 January 1970', () => {
    expect(dayNumber('1970-01-02')).toBe(1);
    expect(dayNumber('2000-03-01') - dayNumber('2000-02-28')).toBe(2); // 2000 was a leap year
  });
  it('are written day first', () => expect(dayWords('2026-05-03')).toBe('3 May 2026'));
});

describe('month ticks', () => {
  const ticks = (from: string, to: string, most: number) => monthTicks(dayNumber(from), dayNumber(to), most);
  it('stand on first days of months and name the year when it changes', () => {
    const found = ticks('2024-10-18', '2026-06-01', 4);
    expect(found.map((tick) => tick.text)).toEqual(['Jan 2025', 'Jul', 'Jan 2026']);
    expect(found[0]?.day).toBe(dayNumber('2025-01-01'));
  });
  it('take the finest step that fits', () => {
    expect(ticks('2026-01-01', '2026-04-01', 4).map((tick) => tick.text)).toEqual(['Jan 2026', 'Feb', 'Mar', 'Apr']);
    expect(ticks('2024-10-18', '2026-06-01', 7).map((tick) => tick.text)).toEqual(['Jan 2025', 'Apr', 'Jul', 'Oct', 'Jan 2026', 'Apr']);
  });
  it('may find no month at all', () => expect(ticks('2026-01-03', '2026-01-20', 4)).toEqual([]));
});
