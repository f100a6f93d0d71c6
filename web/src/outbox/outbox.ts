// What could not be sent yet is kept on this device (IndexedDB) and sent, oldest first, when the server answers again.
// Every entry carries its own key or identity, so sending one twice keeps one record.
import { openDB, type IDBPDatabase } from 'idb';

export type Route = '/api/log_set' | '/api/record_test';
export interface Waiting {
  id?: number;
  route: Route;
  body: unknown;
  words: string; // what it is, for the person
}

let opened: Promise<IDBPDatabase> | undefined;
function database(): Promise<IDBPDatabase> {
  opened ??= openDB('amentum-outbox', 1, {
    upgrade: (db) => db.createObjectStore('waiting', { keyPath: 'id', autoIncrement: true }),
  });
  return opened;
}

export async function keep(entry: Waiting): Promise<void> {
  await (await database()).add('waiting', entry);
}

export async function waiting(): Promise<Waiting[]> {
  return (await (await database()).getAll('waiting')) as Waiting[];
}

export type Sent = { kind: 'taken' | 'refused'; answer: unknown } | { kind: 'unreachable' };

export async function post(route: Route, body: unknown): Promise<Sent> {
  try {
    const response = await fetch(route, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    const answer: unknown = await response.json();
    return { kind: response.ok ? 'taken' : 'refused', answer };
  } catch {
    return { kind: 'unreachable' };
  }
}

// One at a time, so that two tabs or a slow line cannot reorder them. Stops at the first that cannot be sent.
// A refused entry stays, so that nothing a person typed is lost; its sentence comes back.
export async function sendWaiting(): Promise<string[]> {
  const refusals: string[] = [];
  for (const entry of await waiting()) {
    const sent = await post(entry.route, entry.body);
    if (sent.kind === 'unreachable') break;
    if (sent.kind === 'taken') await (await database()).delete('waiting', entry.id as number);
    else refusals.push(`${entry.words}: ${(sent.answer as { refusal?: { sentence: string } }).refusal?.sentence ?? 'refused'}`);
  }
  return refusals;
}

export async function discard(id: number): Promise<void> {
  await (await database()).delete('waiting', id);
}

// A key made on the device; getRandomValues also works where the page came without https.
export function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return 'set-' + Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('');
}
