import { describe, expect, it } from 'vitest';
import { chosenFiles, forceFiles } from './dropped_files';
import { fileKey, plainDigest } from './file_key';
import { countStates, fileLines, lacking, measureBody, noSettings, ready, recordBody, withMove, type Guess } from './file_lines';
import { inRows, runQueue } from './import_queue';

const found = (...paths: string[]) => paths.map((path) => ({ path, file: new File(['x'], path.split('/').at(-1) as string) }));
const guess = (more: Partial<Guess>): Guess => ({ file_name: '', athlete: '', athlete_name: '', effort: '', legs: '', date: '', trial: 0, sure: false, words: '', ...more });
const sure = guess({ athlete: 'ona-reyes', effort: 'countermovement_jump', legs: 'both', date: '2026-05-30', trial: 2, sure: true });

describe('dropped files', () => {
  it('are force files, in the order a person counts; hidden and other ones stay out', () => {
    const { files, others } = forceFiles(found('d/jump 10.csv', 'd/jump 2.CSV', 'd/.DS_Store', 'd/picture.png', 'd/walk.c3d', '.hidden/a.csv'));
    expect(files.map((each) => each.path)).toEqual(['d/jump 2.CSV', 'd/jump 10.csv', 'd/walk.c3d']);
    expect(others).toBe(1);
  });
  it('keep their names when they were chosen one by one', () => expect(chosenFiles([new File(['x'], 'a.csv')])[0]?.path).toBe('a.csv'));
});

describe('the key of a file', () => {
  const key = (text: string, name = 'a.csv', subtle?: SubtleCrypto | null) => fileKey(new File([text], name, { lastModified: Math.random() * 1e9 }), subtle === null ? undefined : globalThis.crypto.subtle);
  it('is 36 letters the server takes, and the same for the same name and bytes, whenever written', async () => {
    expect(await key('1,2,3')).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/);
    expect(await key('1,2,3')).toBe(await key('1,2,3'));
  });
  it('is another for one other byte or another name, with the browser’s digest and without', async () => {
    for (const subtle of [undefined, null]) {
      const keys = await Promise.all([key('1,2,3', 'a.csv', subtle), key('1,2,4', 'a.csv', subtle), key('1,2,3', 'b.csv', subtle)]);
      expect(new Set(keys).size).toBe(3);
    }
  });
  it('without the browser’s digest begins with FNV-1a', () => {
    // Published test vectors of 32-bit FNV-1a: "" is 811c9dc5, "a" is e40c292c, "foobar" is bf9cf968.
    const first = (text: string) => [...plainDigest(new TextEncoder().encode(text)).slice(0, 4)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
    expect(first('')).toBe('811c9dc5');
    expect(first('a')).toBe('e40c292c');
    expect(first('foobar')).toBe('bf9cf968');
  });
});

describe('lines to confirm', () => {
  const lines = fileLines(found('a.csv', 'b.csv', 'c.csv'), [sure, guess({ words: 'Nobody is named.' }), { ...sure, sure: false }]);
  it('have the unsure ones first, unticked; the sure one is ticked', () => {
    expect(lines.map((line) => [line.path, line.ticked])).toEqual([['b.csv', false], ['c.csv', false], ['a.csv', true]]);
  });
  it('say what they lack, and are ready only when ticked and complete', () => {
    expect(lacking(lines[0]!)).toEqual(['athlete', 'effort', 'date']);
    expect(ready({ ...lines[0]!, ticked: true })).toBe(false);
    expect(ready(lines[1]!)).toBe(false);
    expect(ready({ ...lines[1]!, ticked: true })).toBe(true);
    expect(ready({ ...lines[2]!, state: 'kept' })).toBe(false);
    expect(ready({ ...lines[2]!, state: 'failed' })).toBe(true);
  });
  it('are counted by what became of them', () => {
    expect(countStates([{ ...lines[0]!, state: 'kept' }, { ...lines[0]!, state: 'refused' }, lines[1]!])).toEqual({ kept: 1, held: 0, refused: 1, failed: 0 });
  });
});

describe('what is asked', () => {
  const [line] = fileLines(found('d/a.csv'), [sure]);
  it('holds only what was said', () => {
    expect(recordBody(line!, noSettings(), 'QQ==', 'key-0001')).toEqual({
      file_name: 'd/a.csv', content: 'QQ==', effort: 'countermovement_jump', legs: 'both', key: 'key-0001', athlete: 'ona-reyes', date: '2026-05-30', trial: 2,
    });
  });
  it('holds the settings of the batch: a decimal comma is a number, what is no number goes as typed', () => {
    const batch = { ...noSettings(), rate: '1000', unit: 'V', newtonsPerVolt: '400,5', vertical: 'Fz1, Fz2 ,', bodyMass: '18o', bodyMassUnit: 'lb' as const, leftOnSecond: true };
    expect(measureBody({ ...line!, moves: [{ event: 'onset', time_s: 1.4, reason: 'a shift before' }] }, batch, 'QQ==')).toMatchObject({
      rate_hz: 1000, unit: 'V', newtons_per_volt: 400.5, vertical: ['Fz1', 'Fz2'], body_mass_lb: '18o', left_foot_on_second: true,
      moves: [{ event: 'onset', time_s: 1.4, reason: 'a shift before' }],
    });
  });
  it('keeps the last move of an event, and none once it is back at the automatic time', () => {
    const one = withMove([], { event: 'onset', time_s: 1, reason: 'first reason' });
    const two = withMove(withMove(one, { event: 'take_off', time_s: 2, reason: 'second one' }), { event: 'onset', time_s: 1.1, reason: 'third reason' });
    expect(two.map((move) => [move.event, move.time_s])).toEqual([['take_off', 2], ['onset', 1.1]]);
    expect(withMove(two, { event: 'onset', time_s: null, reason: 'back again' }).map((move) => move.event)).toEqual(['take_off']);
  });
});

describe('the queue', () => {
  const pause = () => new Promise((done) => setTimeout(done, 1));
  it('keeps the order inside a row and never has more under way than allowed', async () => {
    const rows = inRows(['a1', 'b1', 'a2', 'c1', 'a3', 'd1'], (item) => item[0] as string);
    expect(rows).toEqual([['a1', 'a2', 'a3'], ['b1'], ['c1'], ['d1']]);
    let now = 0;
    let most = 0;
    const done: string[] = [];
    await runQueue({
      rows, atOnce: 2, stopped: () => false,
      each: async (item) => {
        most = Math.max(most, ++now);
        await pause();
        now -= 1;
        done.push(item);
      },
    });
    expect(most).toBe(2);
    expect(done.filter((item) => item.startsWith('a'))).toEqual(['a1', 'a2', 'a3']);
    expect([...done].sort()).toEqual(['a1', 'a2', 'a3', 'b1', 'c1', 'd1']);
  });
  it('begins nothing more once stopped, and finishes what is under way', async () => {
    const begun: number[] = [];
    const finished: number[] = [];
    await runQueue({
      rows: [[1, 2], [3], [4], [5]], atOnce: 2, stopped: () => begun.length >= 2,
      each: async (item) => { begun.push(item); await pause(); finished.push(item); },
    });
    expect(begun).toEqual([1, 3]);
    expect(finished.sort()).toEqual([1, 3]);
  });
});
