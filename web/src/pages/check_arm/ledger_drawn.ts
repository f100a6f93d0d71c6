// Where everything of the ledger's strip lies: a column a day, in picture units; all numbers come from the server.
import { scaleLinear } from 'd3-scale';
import type { Answer } from '../../api/ask';

export type ArmDay = Answer<'/api/check_arm', 'get'>['ledger'][number];

export interface Column {
  x: number; // left edge
  hard: { y: number; height: number }; // at the foot
  rest: { y: number; height: number }; // on top of it
}
export interface LedgerDrawn {
  width: number;
  columns: Column[];
  ticks: { y: number; text: string }[];
  mondays: { x: number; date: string }[];
  lines: { name: 'seven' | 'twenty_eight'; solid: string; broken: string; endY: number }[];
}

// Of the picture: the plot between top and foot, then rows for soreness, the plan and the dates.
export const ledgerFrame = { height: 250, top: 20, foot: 188, sore: 204, plan: 220, dates: 240, gap: 1.5 };

export function drawLedger(days: ArmDay[], columnWidth: number): LedgerDrawn {
  const most = Math.max(20, ...days.map((day) => day.throws), ...days.flatMap((day) => [day.average_7, day.average_28]));
  const y = scaleLinear([0, most], [ledgerFrame.foot, ledgerFrame.top]).nice(4);
  const middle = (i: number) => (i + 0.5) * columnWidth;
  // The broken part reaches to the first day that is warm, so that the line has no hole.
  const warm = days.findIndex((day) => !day.warming_up);
  const split = warm < 0 ? days.length : warm;
  const path = (of: (day: ArmDay) => number, from: number, to: number) =>
    to - from < 2 ? '' : `M${days.slice(from, to).map((day, i) => `${round(middle(from + i))},${round(y(of(day)))}`).join('L')}`;
  const line = (name: 'seven' | 'twenty_eight', of: (day: ArmDay) => number) => {
    const last = days.at(-1);
    return { name, broken: path(of, 0, Math.min(split + 1, days.length)), solid: path(of, split, days.length), endY: last ? y(of(last)) : 0 };
  };
  return {
    width: days.length * columnWidth,
    columns: days.map((day, i) => ({
      x: i * columnWidth,
      hard: { y: y(day.hard), height: y(0) - y(day.hard) },
      rest: { y: y(day.throws), height: y(day.hard) - y(day.throws) },
    })),
    ticks: y.ticks(4).map((tick) => ({ y: y(tick), text: String(tick) })),
    mondays: days.flatMap((day, i) => (isMonday(day.date) ? [{ x: i * columnWidth, date: day.date }] : [])),
    lines: [line('seven', (day) => day.average_7), line('twenty_eight', (day) => day.average_28)],
  };
}

const round = (x: number) => Math.round(x * 10) / 10;
const isMonday = (date: string) => new Date(`${date}T00:00:00Z`).getUTCDay() === 1;

// The day a key leads to; null: the key means nothing here.
export function dayAfterKey(key: string, day: number, days: number): number | null {
  const step = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageUp: -7, PageDown: 7 }[key];
  if (step !== undefined) return Math.min(days - 1, Math.max(0, day + step));
  if (key === 'Home') return 0;
  return key === 'End' ? days - 1 : null;
}
