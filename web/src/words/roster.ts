// What the list of throwers itself says.
export const rosterWords = {
  title: 'Throwers',
  search: 'Find a thrower',
  sport: 'Sport',
  everySport: 'every sport',
  columns: {
    thrower: 'Thrower',
    velocity: 'Throwing velocity, now',
    limiter: 'What may hold velocity back',
    hardThrow: 'Last hard throw',
    next: 'Next',
  },
  arm: 'may pitch?',
  armOf: (name: string) => `may pitch? ${name}`,
  noHardThrow: 'none on record',
  nobodyFound: 'Nobody here is called that. Clear the search or choose every sport.',
  importLink: 'Bring in records',
  chartNote:
    'Lines share their days and their scale of speed, each around its own middle: slopes and bands compare, heights do not. Band and brackets: 80 %.',
  keys: 'Arrow keys move between throwers, Enter opens one.',
};

export function hardThrowDays(days: number): string {
  if (days === 0) return 'today';
  return days === 1 ? '1 day ago' : `${days} days ago`;
}

export function shownCount(shown: number, all: number): string {
  return shown === all ? `${all} throwers` : `${shown} of ${all} throwers`;
}
