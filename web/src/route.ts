// Which page the address names: #/athlete_record/ona-reyes, #/check_arm/ona-reyes/2026-06-04. Addresses can be kept, sent and gone back to.
export interface Place {
  page: string;
  name: string; // what the page is about: an athlete's id, a block's id; '' when nothing
  day: string; // YYYY-MM-DD the page is asked about; '' when today, or when the page has none
}

export function placeOf(hash: string): Place {
  const [page = '', name = '', day = ''] = hash.replace(/^#\/?/, '').split('/');
  return { page: page || 'roster', name: decoded(name), day: decoded(day) };
}

export function addressOf(page: string, name = '', day = ''): string {
  if (name && day) return `#/${page}/${encodeURIComponent(name)}/${encodeURIComponent(day)}`;
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

// Pages whose name is a thrower's, or that of a block, which has a thrower: from them the stop signs are the thrower's.
const aboutOne = new Set(['athlete_record', 'check_arm', 'check_plan', 'judge_block', 'next_test', 'plan_block', 'retarget_block', 'plan_next_session', 'import_block', 'load_racks', 'ball_mass_line', 'load_velocity', 'joint_ranges', 'sides', 'solve_setup', 'describe_body', 'measure_lead_leg', 'measure_ball_throw', 'traces', 'record_throws', 'plan_ramp', 'growth', 'stop_and_refer']);
export const throwerOf = (place: Place): string => (aboutOne.has(place.page) ? place.name : '');
