import { describe, expect, it } from 'vitest';
import { dayAfter, dayAndMonth, longDay, spokenDay, weekdayOf } from './calendar_days';

// 1 June 2026 is a Monday and 29 February 2028 a Tuesday (any printed calendar; from memory: 1 January 2000 was a Saturday).
describe('days of the calendar', () => {
  it('have their weekday', () => {
    expect([weekdayOf('2000-01-01'), weekdayOf('2026-06-01'), weekdayOf('2028-02-29')]).toEqual(['Saturday', 'Monday', 'Tuesday']);
  });
  it('follow each other over the ends of months, years and February', () => {
    expect(dayAfter('2026-06-30', 1)).toBe('2026-07-01');
    expect(dayAfter('2026-12-31', 1)).toBe('2027-01-01');
    expect(dayAfter('2028-02-28', 1)).toBe('2028-02-29');
    expect(dayAfter('2026-03-01', -1)).toBe('2026-02-28');
  });
  it('are one day each where the clocks change', () => expect(dayAfter('2026-03-28', 2)).toBe('2026-03-30'));
  it('are said as a coach says them', () => {
    const said = (date: string) => spokenDay(date, '2026-06-01');
    expect([said('2026-05-31'), said('2026-06-01'), said('2026-06-02'), said('2026-06-04')]).toEqual(['yesterday', 'today', 'tomorrow', 'Thursday']);
    expect([dayAndMonth('2026-06-04'), longDay('2026-06-04')]).toEqual(['4 June', 'Thursday 4 June 2026']);
  });
});
