// What a thrower's page itself says.
import type { Mark } from '../charts/measured';

export const athleteWords = {
  limiters: 'What holds velocity back',
  quality: 'Quality',
  band: 'likely value and its 80 % band',
  testNext: 'Test this next',
  every: 'Every quality, largest expected gain first',
  gain: 'Goes with, over twelve weeks',
  gainWords: 'In numbers',
  chanceBest: 'Chance of being the best to train',
  chanceShort: 'Best to train',
  level: 'Level, from what is usual',
  levelShort: 'Level',
  basis: 'Slopes come from',
  notTested: 'not tested',
  atOne: 'Open point: likely gain in velocity from an attainable improvement; bar: 80 % interval. “Goes with” is not “causes”.',
  sourcesAndModel: 'Sources and model',
  trajectories: 'Every test so far',
  cautions: 'Cautions in force',
  noCautions: 'No caution is in force on the records.',
  throwing: 'Throwing',
  blocks: 'Blocks',
  noBlocks: 'No block is planned yet.',
  arm: 'The arm: may pitch?',
  planBlock: 'Plan a block',
  recordTests: 'Record tests',
  print: 'Print this page',
  more: 'More of this thrower',
  morePages: {
    plan_next_session: 'What to lift next',
    judge_block: 'Judge a block',
    next_test: 'Which test next',
    traces: 'Force traces',
    ball_mass_line: 'Ball speed over mass',
    load_velocity: 'Bar speed over load',
    joint_ranges: 'Ranges of the joints',
    sides: 'Left and right',
    solve_setup: 'Set an exercise up',
    describe_body: 'Body and lengths',
    measure_lead_leg: 'Lead leg at landing',
    measure_ball_throw: 'Overhead ball throw',
  } as Record<string, string>,
  noTests: 'No tests yet. Record the first on a test day.',
  testsOneByOne: 'The tests, one by one',
  changeInWords: 'What the change rests on',
  columns: { day: 'Day', value: 'Result', how: 'How', note: 'Note' },
  marks: [
    ['test', 'test day'],
    ['logged_set', 'from a logged set'],
    ['far', 'far from what was expected'],
    ['left_out', 'left out of the line'],
  ] as [Mark, string][],
  markNotes: {
    test: '',
    logged_set: 'From a logged set.',
    far: 'Far from what was expected.',
    left_out: '',
  } as Record<Mark, string>,
  verdicts: {
    gained: 'Gained since the first test.',
    lost: 'Lost since the first test.',
    cannot_tell: 'Cannot tell yet whether it changed.',
    '': 'One test day: no change to judge.',
  } as Record<string, string>,
};

// Where the slope of a limiter comes from; information runs from 0 (literature) to 1 (these athletes).
export function slopeBasis(information: number): string {
  if (information < 0.005) return 'the literature';
  if (information > 0.995) return 'these athletes';
  return `${Math.round(100 * information)} % these athletes, the rest the literature`;
}

interface Person {
  age: number;
  birth_date: string;
  sport: string;
  role: string;
  level: string;
  throwing_hand: string;
}
export function personWords(who: Person): string {
  return `${who.age} years (born ${who.birth_date}), ${who.sport} ${who.role}, ${who.level}, throws with the ${who.throwing_hand} hand.`;
}

export function guardianWords(guardian: string, age: number): string {
  if (guardian) return `Guardian: ${guardian}.`;
  return age < 18 ? 'Below 18, and no guardian is on record.' : '';
}
