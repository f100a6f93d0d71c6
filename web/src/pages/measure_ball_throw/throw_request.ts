// What is typed about a throw, and the question it makes. What is no number goes on as typed, to be refused in words.
import { numberOrText } from '../../quantities/typed';

export const links = ['shank', 'thigh', 'trunk', 'upper_arm', 'forearm'] as const;
export const ways = ['deg', 'rate', 'acceleration'] as const;

export interface Thrown {
  stance: string;
  ball: string;
  motion: Record<string, string>; // shank_deg, ...
}

export const noThrow = (): Thrown => ({ stance: 'kneeling', ball: '', motion: Object.fromEntries(links.flatMap((link) => ways.map((way) => [`${link}_${way}`, '']))) });

export const linksOf = (stance: string) => links.filter((each) => each !== 'shank' || stance === 'standing');

export function throwQuery(athlete: string, typed: Thrown, massUnit: string): Record<string, string | number> {
  const fields: [string, string][] = [
    [`ball_${massUnit}`, typed.ball],
    ...linksOf(typed.stance).flatMap((link) => ways.map((way): [string, string] => [`${link}_${way}`, typed.motion[`${link}_${way}`] ?? ''])),
  ];
  return { athlete, stance: typed.stance, ...Object.fromEntries(fields.flatMap(([field, text]) => {
    const value = numberOrText(text);
    return value === null ? [] : [[field, value]];
  })) };
}
