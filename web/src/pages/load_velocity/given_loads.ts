// How typed loads and speeds go into the request: as they stand, so that the server refuses what is no number.
import { numberOrText } from '../../quantities/typed';

export interface TypedLoad {
  load: string;
  speed: string;
}

// A row with nothing in it is left out; a row with half of it goes on, and the server says what is missing.
export function givenLoads(rows: TypedLoad[], unit: string): Record<string, number | string>[] {
  return rows.flatMap((row) => {
    const load = numberOrText(row.load);
    const speed = numberOrText(row.speed);
    if (load === null && speed === null) return [];
    return [{ ...(load === null ? {} : { [`load_${unit}`]: load }), ...(speed === null ? {} : { speed_ms: speed }) }];
  });
}

// The route takes a list as one JSON text.
export function loadQuery(athlete: string, test: string, rows: TypedLoad[], unit: string, bodyMass: string): string {
  const loads = givenLoads(rows, unit);
  const query = new URLSearchParams({ athlete, test });
  if (loads.length) query.set('loads', JSON.stringify(loads));
  const body = numberOrText(bodyMass);
  if (body !== null) query.set(`body_mass_${unit}`, String(body));
  return query.toString();
}
