// How typed text goes into a request. A number with a decimal comma is read as one; text that is no number goes on as
// it stands, so that the server refuses it in a sentence. Turned into null it would be left out without a word.
export function numberOrText(text: string): number | string | null {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  const number = Number(trimmed.replace(',', '.'));
  return Number.isFinite(number) ? number : trimmed;
}
