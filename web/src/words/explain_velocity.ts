// What the page of the whole roster says itself.
export const explainVelocityWords = {
  title: 'What goes with velocity here',
  fitting: 'All test days are being laid into one model; after new records that takes some seconds.',
  seen: (throwers: number, days: number, readings: number) => `${throwers} throwers, ${days} test days, ${readings} results.`,
  columns: {
    quality: 'Quality',
    within: 'When a thrower improves it',
    between: 'From thrower to thrower',
    learned: 'Own records',
    correlation: 'All pairs, r',
  },
  withinNote: (unit: string) => `velocity for a usual twelve-week improvement, ${unit}`,
  betweenNote: (unit: string) => `velocity for one standard deviation more, ${unit}`,
  throwers: (n: number) => (n === 1 ? '1 thrower' : `${n} throwers`),
  learnedOf: (within: number, between: number) => `${Math.round(100 * within)} % and ${Math.round(100 * between)} %`,
  pairs: (pairs: number) => `${pairs} pairs`,
  noPairs: 'too few pairs',
  verdicts: { goes_with: 'goes with it', goes_against: 'goes against it', cannot_tell: 'cannot tell' } as Record<string, string>,
  notes: 'Open point: likely value; bar: 80 % interval; filled where the direction is likelier than nine in ten. Own records: how much of each slope these throwers say themselves, within and between; the rest is the literature’s. r: the correlation of all pairs of test days as observed, for comparison only.',
  leftOut: 'Left out',
  sources: 'Sources and model',
  said: 'Line by line',
};
