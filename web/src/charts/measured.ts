// A test day as a chart sees it, how it is marked, and the chart in words for those who do not see it.
import { between, withUnit, type Shown } from '../quantities/shown';
import { dayWords } from './days';

export interface CurvePoint {
  date: string;
  value: number;
  low: number;
  high: number;
}

export interface MeasuredTest {
  date: string;
  value: number;
  standard_error: number;
  side: string;
  method: string;
  warnings: string[];
  far_from_expected: boolean;
  from_logged_set: boolean;
  left_out: string;
}

// Shapes, not colours: full dot, hollow dot, ringed dot, cross.
export type Mark = 'test' | 'logged_set' | 'far' | 'left_out';

export function markOf(test: MeasuredTest): Mark {
  if (leftOut(test)) return 'left_out';
  if (test.far_from_expected) return 'far';
  return test.from_logged_set ? 'logged_set' : 'test';
}

export function leftOut(test: MeasuredTest): boolean {
  return test.left_out !== '';
}

function counted(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`;
}

// "Throwing velocity: 12 tests from 3 Jan 2025 to 1 May 2026; now 81.9 mph (80 %: 80.7 to 83.1)."
export function chartWords(title: string, tests: MeasuredTest[], now: Shown | null | undefined): string {
  if (!tests.length) return `${title}: no tests yet.`;
  const sets = tests.filter((test) => test.from_logged_set).length;
  const days = tests.map((test) => test.date).sort();
  const parts: string[] = [];
  if (tests.length > sets) parts.push(counted(tests.length - sets, 'test', 'tests'));
  if (sets) parts.push(counted(sets, 'logged set', 'logged sets'));
  const first = days[0] ?? '';
  const last = days.at(-1) ?? '';
  const when = first === last ? `on ${dayWords(first)}` : `from ${dayWords(first)} to ${dayWords(last)}`;
  const far = tests.filter((test) => markOf(test) === 'far').length;
  const left = tests.filter(leftOut).length;
  return [
    `${title}: ${parts.join(' and ')} ${when}`,
    far ? `; ${far} far from what was expected` : '',
    left ? `; ${left} left out of the line` : '',
    now ? `; now ${withUnit(now)} (80 %: ${between(now)})` : '',
    '.',
  ].join('');
}
