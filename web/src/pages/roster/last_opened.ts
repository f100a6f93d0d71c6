// Where the coach was in the list: kept while the page is open, so that going back leads to the same line and search.
export const lastOpened = { athlete: '', typed: '', sport: '' };
