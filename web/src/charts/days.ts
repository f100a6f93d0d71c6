// Days on a chart's axis: the server's YYYY-MM-DD as a number of days, and months as ticks.
const dayMs = 86_400_000;
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

export function dayNumber(date: string): number {
  return Math.round(Date.parse(`${date}T00:00:00Z`) / dayMs);
}

// "2026-05-03" as "3 May 2026"
export function dayWords(date: string): string {
  const [year, month, day] = date.split('-').map(Number);
  return `${day} ${months[(month ?? 1) - 1]} ${year}`;
}

export interface MonthTick {
  day: number;
  text: string; // "Jan 2025" at the first tick and wherever the year has changed, otherwise "Jul"
}

// First days of months between two days: the closest steps of 1, 2, 3, 4, 6, 12, 24 ... months that give at most `most`.
export function monthTicks(from: number, to: number, most: number): MonthTick[] {
  const first = monthAt(from);
  for (const step of [1, 2, 3, 4, 6, 12, 24, 48, 120]) {
    const inside: number[] = [];
    for (let month = Math.ceil(first / step) * step; firstDay(month) <= to; month += step)
      if (firstDay(month) >= from) inside.push(month);
    if (inside.length <= most) return inside.map((month, i) => ({ day: firstDay(month), text: monthText(month, inside[i - 1]) }));
  }
  return [];
}

// Months since the year 0, so that they can be counted through years.
function monthAt(day: number): number {
  const date = new Date(day * dayMs);
  return date.getUTCFullYear() * 12 + date.getUTCMonth();
}

function firstDay(month: number): number {
  return Math.round(Date.UTC(Math.floor(month / 12), month % 12, 1) / dayMs);
}

function monthText(month: number, before: number | undefined): string {
  const year = Math.floor(month / 12);
  const name = months[month % 12] ?? '';
  return before !== undefined && Math.floor(before / 12) === year ? name : `${name} ${year}`;
}
