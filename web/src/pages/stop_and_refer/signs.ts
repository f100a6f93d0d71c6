// The signs, from the server or, when it is away, as this device last read them: never a thrower's entries from a copy.
import { ask, client, type Answer, type Refusal } from '../../api/ask';
import { keepOnDevice, onDevice } from '../../outbox/on_device';

export type Signs = Answer<'/api/stop_and_refer', 'get'>;
export type Pain = Signs['pains'][number];
export interface Read {
  signs?: Signs | undefined;
  refusal?: Refusal | undefined;
  away: boolean;
}
const place = 'stop signs';
const ofNobody = (signs: Signs): Signs => ({ ...signs, athlete: '', name: '', guardian: '', pains: [] });

export async function readSigns(name: string): Promise<Read> {
  const asked = await ask(client.GET('/api/stop_and_refer', { params: { query: name ? { athlete: name } : {} } }));
  if (asked.answer) {
    keepOnDevice(place, ofNobody(asked.answer));
    return { signs: asked.answer, away: false };
  }
  if (asked.refusal.name === 'unreachable') return { signs: onDevice<Signs>(place), refusal: asked.refusal, away: true };
  // Not a thrower's name: a block's, whose thrower is meant, or nobody's. The signs are shown in either case.
  const block = await ask(client.GET('/api/block', { params: { query: { block: name } } }));
  if (block.answer) return readSigns(block.answer.athlete);
  return { ...(await readSigns('')), refusal: asked.refusal };
}
