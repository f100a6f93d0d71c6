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
  sent?: string[]; // it was taken, and this must be read; older entries have no such mark and wait
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

async function everything(): Promise<Waiting[]> {
  try {
    return (await (await database()).getAll('waiting')) as Waiting[];
  } catch {
    return [];
  }
}
export const waiting = async (): Promise<Waiting[]> => (await everything()).filter((each) => !each.sent);
// Sent, and what the server said of it has not been put away yet.
export const toRead = async (): Promise<Waiting[]> => (await everything()).filter((each) => each.sent);

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

// Another window may have sent the same entry: what must be read of it is then marked already and stays.
async function letGo(entry: Waiting, read: string[]): Promise<void> {
  const store = (await database()).transaction('waiting', 'readwrite').store;
  const now = (await store.get(entry.id as number)) as Waiting | undefined;
  if (!now || now.sent) return;
  await (read.length ? store.put({ ...now, sent: read }) : store.delete(entry.id as number));
}

// What was said of each in the last round, by the entry's id.
let lastSaid = new Map<number, Outcome>();
export const saidOfWaiting = (): Map<number, Outcome> => lastSaid;

// Refused entries, and those the server asks about, stay: nothing a person typed is lost. Stops at the first that cannot
// be sent.
async function sendOnce(): Promise<void> {
  const held = new Map<number, Outcome>();
  for (const entry of await waiting()) {
    const sent = await post(entry.route, entry.body);
    if (sent.kind === 'unreachable') break;
    if (sent.kind === 'taken') await letGo(entry, sent.read);
    else held.set(entry.id as number, sent);
  }
  lastSaid = held;
  tell();
}

// One round at a time, so that a slow line cannot make two rounds send the same entry side by side.
let round: Promise<void> | undefined;
export function sendWaiting(): Promise<void> {
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
