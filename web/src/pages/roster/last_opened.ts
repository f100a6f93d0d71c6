// Where the coach was in the list, and what was asked above it: kept while the page is open, so that going back leads to
// the same line, search and question.
export const lastOpened = { athlete: '', typed: '', sport: '', asked: '', askedDay: '' };
