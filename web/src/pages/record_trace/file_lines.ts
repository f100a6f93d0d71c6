// One line a file: what its name seems to say, what the person made of it, and what became of it.
import type { Answer, Refusal } from '../../api/ask';
import { numberOrText } from '../../quantities/typed';
import type { FoundFile } from './dropped_files';

export type Guess = Answer<'/api/guess_trace_names', 'post'>['guesses'][number];
export interface Move {
  event: string;
  time_s: number | null;
  reason: string;
}

export interface FileLine {
  file: File;
  path: string;
  athlete: string;
  effort: string;
  legs: string;
  date: string;
  trial: string;
  sure: boolean;
  words: string;
  ticked: boolean;
  moves: Move[];
  state: 'waiting' | 'under_way' | 'kept' | 'held' | 'refused' | 'failed';
  said: string;
  trace: string;
  refusal: Refusal | undefined;
}

export function fileLines(found: FoundFile[], guesses: Guess[]): FileLine[] {
  const lines = found.map(({ file, path }, i): FileLine => {
    const guess = guesses[i];
    const said = { athlete: guess?.athlete ?? '', effort: guess?.effort ?? '', date: guess?.date ?? '' };
    const sure = guess?.sure === true && lacking(said).length === 0;
    return {
      file, path, ...said, legs: guess?.legs || 'both', trial: guess?.trial ? String(guess.trial) : '', sure, words: guess?.words ?? '', ticked: sure,
      moves: [], state: 'waiting', said: '', trace: '', refusal: undefined,
    };
  });
  return lines.sort((a, b) => Number(a.sure) - Number(b.sure)); // a stable sort: the order of the names stays inside both
}

export function lacking(line: Pick<FileLine, 'athlete' | 'effort' | 'date'>): ('athlete' | 'effort' | 'date')[] {
  return (['athlete', 'effort', 'date'] as const).filter((field) => line[field] === '');
}

export const open = (line: FileLine) => line.state === 'waiting' || line.state === 'refused' || line.state === 'failed';
export const ready = (line: FileLine) => line.ticked && open(line) && lacking(line).length === 0;

export interface BatchSettings {
  rate: string;
  unit: string;
  newtonsPerVolt: string;
  vertical: string;
  lateral: string;
  leftOnSecond: boolean;
  bodyMass: string;
  bodyMassUnit: 'kg' | 'lb';
  boxHeight: string;
  boxHeightUnit: 'cm' | 'in';
  device: string;
  note: string;
}
export const noSettings = (): BatchSettings => ({
  rate: '', unit: '', newtonsPerVolt: '', vertical: '', lateral: '', leftOnSecond: false, bodyMass: '', bodyMassUnit: 'kg', boxHeight: '', boxHeightUnit: 'cm', device: '', note: '',
});

const named = (text: string) => text.split(',').map((each) => each.trim()).filter(Boolean);

// What was typed goes as it stands: a number that is none is refused by the server in a sentence.
export function measureBody(line: FileLine, batch: BatchSettings, content: string) {
  const body: Record<string, unknown> = { file_name: line.path, content, effort: line.effort, legs: line.legs };
  const put = (field: string, text: string) => {
    if (text.trim() !== '') body[field] = numberOrText(text);
  };
  put('rate_hz', batch.rate);
  put(`body_mass_${batch.bodyMassUnit}`, batch.bodyMass);
  put(`box_height_${batch.boxHeightUnit}`, batch.boxHeight);
  if (batch.unit) body['unit'] = batch.unit;
  if (batch.unit === 'V') put('newtons_per_volt', batch.newtonsPerVolt);
  if (named(batch.vertical).length) body['vertical'] = named(batch.vertical);
  if (named(batch.lateral).length) body['lateral'] = named(batch.lateral);
  if (batch.leftOnSecond) body['left_foot_on_second'] = true;
  if (line.moves.length) body['moves'] = line.moves.map(({ event, time_s, reason }) => (time_s === null ? { event, reason } : { event, time_s, reason }));
  return body;
}

export function recordBody(line: FileLine, batch: BatchSettings, content: string, key: string) {
  const body: Record<string, unknown> = { ...measureBody(line, batch, content), key, athlete: line.athlete, date: line.date };
  if (line.trial.trim()) body['trial'] = numberOrText(line.trial);
  if (batch.device.trim()) body['device'] = batch.device.trim();
  if (batch.note.trim()) body['note'] = batch.note.trim();
  return body;
}

// The last move of an event counts; going back to the automatic time takes the move away again.
export function withMove(moves: Move[], move: Move): Move[] {
  const others = moves.filter((each) => each.event !== move.event);
  return move.time_s === null ? others : [...others, move];
}

export function countStates(lines: FileLine[]) {
  const of = (state: FileLine['state']) => lines.filter((line) => line.state === state).length;
  return { kept: of('kept'), held: of('held'), refused: of('refused'), failed: of('failed') };
}
