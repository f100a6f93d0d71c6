// Reads the server's words for what an input may be ("0 to 60; when left out 0", "female, male") into a form field.
export interface AllowedWords {
  choices: string[]; // empty: typed, not chosen
  range: string; // the words before "; when left out"
  otherwise: string; // what the server takes when the field is left empty; '' when it says nothing
}

export function readAllowed(allowed: string): AllowedWords {
  const [range = '', otherwise = ''] = allowed.split('; when left out ');
  const parts = range.split(', ');
  const chosen = parts.every((part) => /^[\p{L}\p{N}_./-]+$/u.test(part));
  return { choices: chosen ? parts : [], range, otherwise };
}

// The inputs that were filled in, as the route wants them.
export function filledIn(values: Record<string, string | undefined>): Record<string, string> {
  return Object.fromEntries(Object.entries(values).map(([name, text]) => [name, (text ?? '').trim()] as const).filter(([, text]) => text !== ''));
}

// "amentum method one_rep_max load_kg=100 reps=5"; what holds a blank is quoted.
export function asCommand(method: string, inputs: Record<string, string>): string {
  const words = Object.entries(inputs).map(([name, text]) => (/^[\w.,:+/-]+$/.test(text) ? `${name}=${text}` : `${name}='${text.replaceAll("'", `'\\''`)}'`));
  return ['amentum method', method, ...words].join(' ');
}

// A value to six significant figures: enough to check by hand, without the last noise of binary fractions. An error: two.
export function significant(value: number, figures = 6): string {
  if (!Number.isFinite(value)) return String(value);
  const text = Number(value.toPrecision(figures)).toString();
  return text.replace('-', '\u2212');
}
