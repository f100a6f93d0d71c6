// Whose an address is, when the server cannot be asked: the throwers, and the blocks with theirs, as this device last read
// them. A name that is in neither is nobody's; what is written down under it would be refused for ever.
import { keepOnDevice, onDevice } from './on_device';

export interface Known {
  athlete: string;
  name: string;
}
const mostBlocks = 200; // the newest: localStorage has little room

export const knownThrowers = (): Known[] => onDevice<Known[]>('throwers') ?? [];

export function knownThrower(address: string): Known | undefined {
  const all = knownThrowers();
  const athlete = (onDevice<[string, string][]>('blocks of') ?? []).find(([block]) => block === address)?.[1] ?? address;
  return all.find((each) => each.athlete === athlete) ?? all.find((each) => each.name === athlete);
}

function keepThrowers(all: Known[]): void {
  keepOnDevice('throwers', all.map(({ athlete, name }) => ({ athlete, name })));
}

function keepBlock({ block, athlete, name }: { block: string } & Known): void {
  const others = (onDevice<[string, string][]>('blocks of') ?? []).filter(([each]) => each !== block);
  keepOnDevice('blocks of', [...others, [block, athlete]].slice(-mostBlocks));
  if (!knownThrower(athlete)) keepThrowers([...knownThrowers(), { athlete, name }]);
}

// Called with every answer of the server that tells whose something is.
const readers: Record<string, (answer: never) => void> = {
  '/api/roster': ({ throwers }: { throwers: Known[] }) => keepThrowers(throwers),
  '/api/check_staff': ({ lines }: { lines: Known[] }) => keepThrowers(lines),
  '/api/block': keepBlock,
};
export const tellsWhose = (path: string): boolean => path in readers;
export function rememberWhose(path: string, answer: unknown): void {
  readers[path]?.(answer as never);
}
