// Which page the address names: #/athlete_record/ona-reyes?week=2. Addresses can be kept, sent and gone back to.
export interface Place {
  page: string;
  name: string; // what the page is about: an athlete's id, a block's id; '' when nothing
}

export function placeOf(hash: string): Place {
  const [page = '', name = ''] = hash.replace(/^#\/?/, '').split('/');
  return { page: page || 'roster', name: decodeURIComponent(name) };
}

export function addressOf(page: string, name = ''): string {
  return name ? `#/${page}/${encodeURIComponent(name)}` : `#/${page}`;
}
