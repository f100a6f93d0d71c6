import { describe, expect, it } from 'vitest';
import { dayAfterKey, drawLedger, ledgerFrame, type ArmDay } from './ledger_drawn';

const day = (date: string, throws: number, hard: number, warming_up = false): ArmDay => ({
  date, throws, hard, warming_up, known: throws ? 'thrown' : 'none', pitches: 0, entries: [], soreness: null, average_7: 10, average_28: 5, planned: '', pain: false,
});
// Laid out by hand: 100 throws reach the top of the plot, 0 its foot.
const days = [day('2026-05-31', 0, 0, true), day('2026-06-01', 100, 40, true), day('2026-06-02', 50, 50)];

describe('the strip', () => {
  const drawn = drawLedger(days, 14);
  const plot = ledgerFrame.foot - ledgerFrame.top;
  it('stands the hard throws at the foot and the others on them', () => {
    expect(drawn.columns[1]?.hard.height).toBeCloseTo(0.4 * plot);
    expect(drawn.columns[1]?.rest.height).toBeCloseTo(0.6 * plot);
    expect(drawn.columns[1]?.rest.y).toBeCloseTo(ledgerFrame.top);
    expect(drawn.columns[2]?.rest.height).toBeCloseTo(0);
    expect(drawn.columns[0]?.hard.height).toBe(0);
  });
  it('has a column a day and a date every Monday', () => {
    expect([drawn.width, drawn.mondays]).toEqual([42, [{ x: 14, date: '2026-06-01' }]]);
  });
  it('breaks a line while it warms up, without a hole before the solid part', () => {
    expect(drawn.lines[0]?.broken.split('L')).toHaveLength(3);
    expect(drawn.lines[0]?.solid).toBe('');
    expect(drawLedger([...days, day('2026-06-03', 0, 0)], 14).lines[1]?.solid.split('L')).toHaveLength(2);
  });
  it('can be empty', () => expect(drawLedger([], 14).columns).toEqual([]));
});

it('keys move by days and weeks and stay inside', () => {
  expect([dayAfterKey('ArrowLeft', 0, 9), dayAfterKey('ArrowRight', 3, 9), dayAfterKey('PageDown', 5, 9), dayAfterKey('End', 0, 9), dayAfterKey('a', 0, 9)]).toEqual([0, 4, 8, 8, null]);
});
