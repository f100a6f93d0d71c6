// The text of a chosen file, or null when it is not UTF-8: a name must never come in with letters lost.
//
// A byte order mark is dropped. Old spreadsheet exports are often Windows-1252 or UTF-16; bytes cannot say which, so such
// a file is refused rather than guessed at.
export function readTable(bytes: ArrayBuffer | Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
