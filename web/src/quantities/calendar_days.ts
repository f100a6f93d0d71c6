// Days of the calendar as a coach says them. The server's days are YYYY-MM-DD, without a time zone, and stay so here.
const dayMs = 86_400_000;
const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

const momentOf = (date: string) => Date.parse(`${date}T00:00:00Z`);

// dayAfter('2026-06-30', 1) is '2026-07-01'; below zero: days before
export function dayAfter(date: string, days: number): string {
  return new Date(momentOf(date) + days * dayMs).toISOString().slice(0, 10);
}

export function weekdayOf(date: string): string {
  return weekdays[new Date(momentOf(date)).getUTCDay()] ?? '';
}

// "4 June"
export function dayAndMonth(date: string): string {
  const [, month, day] = date.split('-').map(Number);
  return `${day} ${months[(month ?? 1) - 1]}`;
}

// "Thursday 4 June 2026"
export function longDay(date: string): string {
  return `${weekdayOf(date)} ${dayAndMonth(date)} ${date.slice(0, 4)}`;
}

// "yesterday", "today", "tomorrow", otherwise the weekday
export function spokenDay(date: string, today: string): string {
  const ahead = Math.round((momentOf(date) - momentOf(today)) / dayMs);
  return { '-1': 'yesterday', '0': 'today', '1': 'tomorrow' }[String(ahead)] ?? weekdayOf(date);
}
