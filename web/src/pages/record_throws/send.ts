// An entry on its way: the server's answer, its refusal, or kept on this device until it answers. The same entry sent
// twice is one entry, so the outbox may hold it.
import { ask, client, type Answer, type Refusal } from '../../api/ask';
import { keep } from '../../outbox/outbox';
import { outboxWords } from '../../words/outbox';
import { rememberEntry, type Entry } from './entry';

export interface Sent {
  answer?: Answer<'/api/record_throws', 'post'> | undefined;
  refusal?: Refusal | undefined;
  held: boolean; // on this device, and sent from it later
  waits: string; // what is said while the server is away, also when this device keeps nothing
}

export async function sendEntry(entry: Entry, words: string): Promise<Sent> {
  const { answer, refusal } = await ask(client.POST('/api/record_throws', { body: entry as never }));
  const away = refusal?.name === 'unreachable';
  const held = away && (await keep({ route: '/api/record_throws', body: { ...entry }, words }));
  if (answer || held) rememberEntry(entry);
  return { answer, refusal: away ? undefined : refusal, held, waits: away ? (held ? outboxWords.keptHere : outboxWords.notKept) : '' };
}
