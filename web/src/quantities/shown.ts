// How numbers look. The server gives value, interval, unit and decimals; nothing is computed here but text.
export interface Shown {
  value: number;
  low: number;
  high: number;
  unit: string;
  decimals: number;
}

export function fixed(x: number, decimals: number): string {
  const text = x.toFixed(decimals).replace('-', '\u2212');
  return /[1-9]/.test(text) ? text : text.replace('\u2212', '');
}

export function withUnit(s: Shown): string {
  return `${fixed(s.value, s.decimals)} ${s.unit}`;
}

export function between(s: Shown): string {
  return `${fixed(s.low, s.decimals)} to ${fixed(s.high, s.decimals)}`;
}

export function signed(x: number, decimals: number): string {
  const text = fixed(x, decimals);
  return x > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

export function chance(p: number): string {
  if (p < 0.01) return 'under 1 %';
  if (p > 0.99) return 'over 99 %';
  return `${Math.round(100 * p)} %`;
}

// Sets a sentence of the server: keeps "26 %" and "5 days" on one line, and gives numbers below zero a true minus sign,
// as in the numbers beside it. Days (2026-03-05) and hyphens stay.
export function unbroken(text: string): string {
  return text.replace(/(^|[\s(])-(?=\d)/g, '$1\u2212').replace(/(\d) (%|days?\b|mph\b|lb\b)/g, '$1\u00a0$2');
}

export function plainWord(key: string): string {
  return key.replaceAll('_', ' ');
}
