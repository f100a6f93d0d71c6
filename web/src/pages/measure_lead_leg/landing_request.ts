// What is typed about a landing, and the question it makes. What is no number goes on as typed, to be refused in words.
import { numberOrText } from '../../quantities/typed';

export interface Landing {
  unit: string; // of force: bw, n
  force_x: string;
  force_y: string;
  pressure: string;
  shin: string;
  thigh: string;
  error: string;
  accelerations: Record<string, string>; // foot_ax, ...
}

export const accelerations = ['foot', 'shank', 'thigh'].flatMap((part) => ['ax', 'ay', 'turning'].map((way) => `${part}_${way}`));

export const noLanding = (): Landing => ({
  unit: 'bw', force_x: '', force_y: '', pressure: '', shin: '', thigh: '', error: '', accelerations: Object.fromEntries(accelerations.map((each) => [each, ''])),
});

export function landingQuery(athlete: string, typed: Landing, lengthUnit: string): Record<string, string | number> {
  const fields: [string, string][] = [
    [`force_x_${typed.unit}`, typed.force_x], [`force_y_${typed.unit}`, typed.force_y], [`pressure_${lengthUnit}`, typed.pressure],
    ['shin_lean_deg', typed.shin], ['thigh_deg', typed.thigh], ['angle_error_deg', typed.error], ...Object.entries(typed.accelerations),
  ];
  return { athlete, ...Object.fromEntries(fields.flatMap(([field, text]) => {
    const value = numberOrText(text);
    return value === null ? [] : [[field, value]];
  })) };
}
