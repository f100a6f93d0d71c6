// Which page the address names: #/athlete_record/ona-reyes. Addresses can be kept, sent and gone back to.
export interface Place {
  page: string;
  name: string; // what the page is about: an athlete's id, a block's id; '' when nothing
}

export function placeOf(hash: string): Place {
  const [page = '', name = ''] = hash.replace(/^#\/?/, '').split('/');
  return { page: page || 'roster', name: decoded(name) };
}

export function addressOf(page: string, name = ''): string {
  return name ? `#/${page}/${encodeURIComponent(name)}` : `#/${page}`;
}

// An address cut off by a mail or typed by hand may hold a lone '%': then it is a name as it stands, which the server
// does not know, and not a fault that leaves the screen empty.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
