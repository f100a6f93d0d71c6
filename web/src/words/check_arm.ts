import { dayAndMonth, longDay } from '../quantities/calendar_days';
// What the page of one arm says itself.
export const armWords = {
  arm: 'The arm',
  day: 'On which day',
  limits: (count: number) => (count === 1 ? 'The limit and its arithmetic' : `The ${count} limits and their arithmetic`),
  bindsFirst: 'binds first',
  most: (most: number) => (most === 1 ? 'at most 1 pitch' : `at most ${most} pitches`),
  noTeam: 'Plays for no team known here.',
  painAndSteps: 'Pain and steps in force',
  open: 'Open',
  cleared: 'Cleared',
  stopsThrowing: 'stops throwing until a named adult writes down who cleared it',
  stopsNoThrowing: 'does not stop throwing by the table; what loads it is left out',
  notedBy: (who: string, day: string) => `Noted by ${who}, ${dayAndMonth(day)} ${day.slice(0, 4)}.`,
  origins: { clinician: 'A clinician’s plan', coach: 'A coach’s ramp' } as Record<string, string>,
  stepOf: (step: number, steps: number) => (step === 0 ? `all ${steps} steps are through` : `step ${step} of ${steps} is next`),
  by: (author: string) => `by ${author}`,
  findings: 'What the guard rails say',
  noFindings: 'Nothing is found on the throws written down.',
  answer: {
    open: 'Answer for this stop, with a reason',
    coach: 'Who answers (name)',
    reason: 'Why (at least 10 letters; kept for good)',
    keep: 'Answer for it',
    holds: (day: string) => `It holds for ${longDay(day)} alone. The stop stays on every list, with your name and reason beside it.`,
  },
  ledger: 'The ledger, day by day',
  ledgerNote: 'Choose a day in the strip, or step with the buttons and the arrow keys. Days nobody wrote down are not zero.',
  table: 'The same days as a table',
  columns: { day: 'Day', throws: 'Throws', hard: 'Hard', games: 'In games', sore: 'Sore', line7: '7 d', line28: '28 d', note: 'Also' },
  everyStep: 'Every step',
  unknown: 'unknown',
  earlier: 'Day before',
  later: 'Day after',
  strip: 'A day of the ledger',
  key: {
    hard: 'hard throws',
    rest: 'other throws',
    none: 'none, and known',
    unknown: 'unknown: nobody wrote it down',
    game: 'pitched in a game',
    seven: 'mean of about 7 days, at least',
    twentyEight: 'mean of about 28 days, at least',
    warming: 'broken: still warming up',
    sore: 'row “sore”: the worst of the day, 0 to 10',
    plan: 'row “plan”: s start, g game, p practice, t travel, o off',
    pain: 'a pain entry is open',
  },
  weeks: 'Weeks beside the own last six',
  weekOf: (monday: string) => `from ${dayAndMonth(monday)}`,
  atLeast: (throws: number, unknown: number) => (unknown ? `at least ${throws}` : `${throws}`),
  unknownDays: (days: number) => (days === 0 ? '' : days === 1 ? '1 day unknown' : `${days} days unknown`),
  notOver: 'not over yet',
  weekColumns: { week: 'Week', bar: 'Hard, and others', throws: 'Throws', hard: 'Hard', unknown: 'Not written down' },
  planned: 'Planned, and what it does to the days around',
  noPlanned: 'No game or start is planned in the next four weeks.',
  watch: 'Range, strength and growth',
  whyNoRatio: 'Why no ratio of short to long workload stands here',
  writeDown: 'Write down',
  team: {
    open: 'A team this thrower plays for',
    team: 'Team',
    organisation: 'By whose table',
    none: 'none the tool knows',
    from: 'First day',
    to: 'Last day, when it ends',
    keep: 'Keep this team',
    note: 'All pitches of all teams add up, and the strictest table holds.',
  },
  dayForm: {
    open: 'A day that is spoken for',
    kind: 'What',
    kinds: { start: 'start, as pitcher', game: 'game', practice: 'practice', travel: 'travel', off: 'off' } as Record<string, string>,
    from: 'Day',
    to: 'Last day, of several',
    note: 'Where, against whom',
    keep: 'Keep this day',
  },
  more: 'More of this arm',
  pages: {
    record_throws: 'Write down throws',
    stop_and_refer: 'Signs, pain, clearance',
    plan_ramp: 'Back to throwing, step by step',
    check_plan: 'Everything planned, checked anew',
    growth: 'Growth',
    athlete_record: 'The thrower',
  } as Record<string, string>,
  staff: 'Everybody on this day',
};

export const planLetters: Record<string, string> = { start: 's', game: 'g', practice: 'p', travel: 't', off: 'o' };

interface Day {
  date: string;
  known: string;
  throws: number;
  hard: number;
  pitches: number;
  soreness?: number | null;
  planned: string;
  pain: boolean;
}

export function thrownWords(day: Day): string {
  if (day.known === 'unknown') return 'Unknown: nobody wrote this day down.';
  if (day.known === 'none') return 'No throws, and that is written down.';
  const games = day.pitches ? `, ${day.pitches} ${day.pitches === 1 ? 'pitch' : 'pitches'} in games` : '';
  return `${day.throws} ${day.throws === 1 ? 'throw' : 'throws'}, ${day.hard} hard${games}.`;
}

export function alsoWords(day: Day): string[] {
  const sore = day.soreness === null || day.soreness === undefined ? [] : [`Soreness ${day.soreness} of 10.`];
  return [...sore, ...(day.planned ? [`Planned: ${armWords.dayForm.kinds[day.planned] ?? day.planned}.`] : []), ...(day.pain ? ['A pain entry was open.'] : [])];
}

export function lineWords(seven: string, twentyEight: string, warming: boolean): string {
  return `Mean of about 7 days: at least ${seven} throws a day; of about 28 days: at least ${twentyEight}.${warming ? ' Both still warm up: fewer than 28 days are written down before.' : ''}`;
}
