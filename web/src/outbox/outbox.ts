// What could not be sent yet is kept on this device (IndexedDB) and sent, oldest first, when the server answers again.
// Every entry carries its own key or identity, so sending one twice keeps one record.
import { openDB, type IDBPDatabase } from 'idb';
import { outcomeOf, type Outcome } from './outcome';

export type Route = '/api/log_set' | '/api/record_test' | '/api/record_throws' | '/api/record_practice' | '/api/record_pain';
export interface Waiting {
  id?: number;
  route: Route;
  body: Record<string, unknown>;
  words: string; // what it is, for the person
}

// An event of the window, whenever something more or something less waits.
export const outboxChanged = 'outbox-changed';
const tell = () => window.dispatchEvent(new Event(outboxChanged));

let opened: Promise<IDBPDatabase> | undefined;
function database(): Promise<IDBPDatabase> {
  opened ??= openDB('amentum-outbox', 1, {
    upgrade: (db) => db.createObjectStore('waiting', { keyPath: 'id', autoIncrement: true }),
  });
  return opened;
}

// False when this device keeps nothing (no IndexedDB, no room): the person must then keep what was typed.
export async function keep(entry: Waiting): Promise<boolean> {
  try {
    await (await database()).add('waiting', entry);
    tell();
    return true;
  } catch {
    return false;
  }
}

export async function waiting(): Promise<Waiting[]> {
  try {
    return (await (await database()).getAll('waiting')) as Waiting[];
  } catch {
    return [];
  }
}

async function post(route: Route, body: unknown): Promise<Outcome> {
  try {
    const response = await fetch(route, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    return outcomeOf(response.ok, await response.json());
  } catch {
    return { kind: 'unreachable' };
  }
}

// Refused entries, and those the server asks about, stay: nothing a person typed is lost. What was said of each comes
// back by the entry's id. Stops at the first that cannot be sent.
async function sendOnce(): Promise<Map<number, Outcome>> {
  const held = new Map<number, Outcome>();
  for (const entry of await waiting()) {
    const sent = await post(entry.route, entry.body);
    if (sent.kind === 'unreachable') break;
    if (sent.kind === 'taken') await (await database()).delete('waiting', entry.id as number);
    else held.set(entry.id as number, sent);
  }
  tell();
  return held;
}

// One round at a time, so that a slow line cannot make two rounds send the same entry side by side.
let round: Promise<Map<number, Outcome>> | undefined;
export function sendWaiting(): Promise<Map<number, Outcome>> {
  round ??= sendOnce().finally(() => (round = undefined));
  return round;
}

export async function discard(id: number): Promise<void> {
  await (await database()).delete('waiting', id);
  tell();
}

// The answer to "Keep it?": the entry is sent once more, now with keep.
export async function keepAnyway(entry: Waiting): Promise<void> {
  await (await database()).put('waiting', { ...entry, body: { ...entry.body, keep: true } });
}

// A key made on the device; getRandomValues also works where the page came without https.
export function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return 'set-' + Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('');
}
