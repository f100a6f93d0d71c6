// Force traces brought in: dropped or chosen, confirmed, looked at, kept or refused, cancelled, dropped again.
import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture } from './browser.mjs';
import { forceFile, jumpForces } from './made_traces.mjs';

export const who = 'Marisol Quay';
export const day = '2026-05-30';
export const jump = (trial, more = {}) => forceFile(`${who} countermovement jump ${day} trial ${trial}.csv`, jumpForces({ seed: trial, ...more }));
export const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
export const keptTraces = async (url) => (await get(url, '/api/traces?athlete=marisol-quay')).body.groups.flatMap((group) => group.trials);

// As a hand would: the files are let fall on the place for them.
export async function drop(page, files) {
  const transfer = await page.evaluateHandle((all) => {
    const carried = new DataTransfer();
    for (const { name, text } of all) carried.items.add(new File([text], name, { type: 'text/csv' }));
    return carried;
  }, files.map((file) => ({ name: file.name, text: file.buffer.toString() })));
  await page.getByRole('group', { name: 'Drop files or a folder here' }).dispatchEvent('drop', { dataTransfer: transfer });
}
const lineOf = (page, name) => page.getByRole('listitem').filter({ has: page.getByRole('group', { name, exact: true }) });
export const takeOff = (page) => page.getByRole('slider', { name: 'Take-off' });
export const restless = jump(3, { quiet: 0.2 }); // nobody stands still for a second before it

export function recordTraceTests(world) {
  const recordPage = (width) => openPage(world.browser, `${world.server.url}/#/record_trace`, width);
  const good = jump(1);
  const noisy = jump(2, { noise: 9 });
  test('three files dropped: confirmed, brought in with counts, the restless one refused, and no other stopped by it', async () => {
    const page = await recordPage();
    await drop(page, [noisy, restless, good, { name: 'notes.png', buffer: Buffer.from('x') }]);
    await page.getByText('One file of other kinds is left alone').waitFor();
    const bring = page.getByRole('button', { name: 'Bring in 3 files' });
    assert.equal(await page.getByRole('group', { name: good.name }).getByLabel('Thrower').inputValue(), 'marisol-quay');
    assert.equal(await page.getByRole('group', { name: good.name }).getByLabel('Day').inputValue(), day);
    await bring.click();
    await page.getByText('3 of 3 done, 2 kept, 1 refused').waitFor();
    assert.equal(await page.getByRole('progressbar').getAttribute('value'), '3');
    const kept = await keptTraces(world.server.url);
    assert.deepEqual(kept.map((each) => each.trial), [1, 2]);
    for (const [file, trial] of [[good, kept[0]], [noisy, kept[1]]]) {
      const main = trial.metrics.find((metric) => metric.test !== '');
      const said = await lineOf(page, file.name).innerText();
      assert.ok(said.includes(`Kept: trial ${trial.trial}, ${main.name} ${fixed(main.value, main.decimals)} ${main.unit}`), said);
    }
    assert.match(await lineOf(page, restless.name).innerText(), /Not kept \(refusal 60[12]\): .{20}/);
    await picture(page, world.pictures, 'record-trace-done-desktop');
    await page.close();
  });
  test('the same files dropped again change nothing', async () => {
    const before = await keptTraces(world.server.url);
    const page = await recordPage();
    await drop(page, [good, noisy]);
    await page.getByRole('button', { name: 'Bring in 2 files' }).click();
    await page.getByText('2 of 2 done, 0 kept, 2 held before').waitFor();
    assert.deepEqual(await keptTraces(world.server.url), before);
    await page.close();
  });
  test('a folder, let fall or chosen, is opened: the folder’s name tells the thrower, files of other kinds stay out', async () => {
    const folder = join(mkdtempSync(join(tmpdir(), 'amentum-')), `${who} ${day}`);
    mkdirSync(join(folder, 'countermovement jump'), { recursive: true });
    for (const trial of [40, 41]) writeFileSync(join(folder, 'countermovement jump', `trial ${trial}.csv`), jump(trial).buffer);
    writeFileSync(join(folder, 'notes.md'), 'x');
    const page = await recordPage();
    const seen = async () => {
      await page.getByText('One file of other kinds is left alone').waitFor();
      await page.getByRole('button', { name: 'Bring in 2 files' }).waitFor();
      for (const trial of [40, 41]) {
        const line = page.getByRole('group', { name: `${who} ${day}/countermovement jump/trial ${trial}.csv` });
        assert.equal(await line.getByLabel('Thrower').inputValue(), 'marisol-quay');
        assert.equal(await line.getByRole('textbox', { name: 'Trial' }).inputValue(), String(trial));
      }
    };
    const place = await page.getByRole('group', { name: 'Drop files or a folder here' }).boundingBox();
    const hand = await page.context().newCDPSession(page);
    for (const type of ['dragEnter', 'dragOver', 'drop'])
      await hand.send('Input.dispatchDragEvent', { type, x: place.x + 50, y: place.y + 30, data: { items: [], files: [folder], dragOperationsMask: 1 } });
    await seen();
    await page.getByRole('button', { name: 'Clear the list' }).click();
    await page.locator('input[type=file]:not([multiple])').setInputFiles(folder);
    await seen();
    await page.close();
  });
  test('a file whose name says nothing comes first, unticked, says what it lacks, and is filled in', async () => {
    const page = await recordPage();
    const nameless = forceFile('plate.csv', jumpForces({ seed: 9 }));
    await page.locator('input[type=file][multiple]').setInputFiles([jump(4), nameless]);
    const names = page.locator('main li.file .name > b');
    await names.first().waitFor();
    assert.equal(await names.first().innerText(), 'plate.csv');
    const line = page.getByRole('group', { name: 'plate.csv' });
    assert.equal(await line.getByLabel('Take it').isChecked(), false);
    await line.getByLabel('Take it').check();
    await page.getByRole('button', { name: 'Bring in one file' }).waitFor(); // ticked, but it lacks three things
    const fill = page.getByRole('group', { name: 'Fill in' });
    await fill.getByLabel('Thrower').selectOption(who);
    await fill.getByLabel('Effort').selectOption('countermovement_jump');
    await fill.getByLabel('Day').fill(day);
    await fill.getByRole('button').click();
    await page.getByRole('button', { name: 'Bring in 2 files' }).waitFor();
    await page.close();
  });
  test('cancel: what is under way is finished, nothing else is begun, and the rest can be brought in later', async () => {
    const page = await recordPage();
    const before = (await keptTraces(world.server.url)).length;
    const many = Array.from({ length: 8 }, (_, i) => jump(10 + i));
    let hold;
    const held = new Promise((free) => (hold = free));
    await page.route('**/api/record_trace', async (route) => { await held; await route.continue(); });
    await drop(page, many);
    await page.getByRole('button', { name: 'Bring in 8 files' }).click();
    await page.getByText('0 of 8 done').waitFor();
    await page.getByRole('button', { name: 'Cancel' }).click();
    hold();
    await page.getByText('Cancelled: those under way were finished').waitFor();
    await page.getByText('1 of 8 done, 1 kept').waitFor(); // one thrower's trials of one day go one after another
    assert.equal((await keptTraces(world.server.url)).length, before + 1);
    await page.getByRole('button', { name: 'Bring in 7 files' }).waitFor();
    await page.close();
  });
  test('a preview of a refused file shows its force and the sentence with its number, and invents nothing', async () => {
    const page = await recordPage();
    await drop(page, [restless]);
    await page.getByRole('button', { name: /^Look, / }).click();
    await page.getByText(/Not measured \(refusal 60[12]\)/).waitFor();
    assert.equal(await page.getByRole('img', { name: /^Countermovement jump, .* No event was found/ }).count(), 1);
    assert.equal(await page.getByRole('heading', { name: 'Numbers' }).count(), 0);
    assert.equal(await takeOff(page).count(), 0);
    await page.close();
  });
  test('an event moved in the preview goes with the file, and nothing is kept before that', async () => {
    const page = await recordPage();
    const before = (await keptTraces(world.server.url)).length;
    const file = jump(30);
    await drop(page, [file]);
    await page.getByRole('button', { name: /^Look, / }).click();
    await takeOff(page).focus();
    await page.keyboard.press('ArrowRight');
    await page.getByLabel(/^Why\?/).fill('the foot scraped the plate');
    await page.getByRole('button', { name: 'Keep the move' }).click();
    await page.getByRole('columnheader', { name: 'Before the move' }).waitFor();
    assert.equal((await keptTraces(world.server.url)).length, before);
    await page.getByText('One event moved in the preview goes with it.').waitFor();
    await page.getByRole('button', { name: 'Bring in one file' }).click();
    await page.getByText('1 of 1 done, 1 kept').waitFor();
    assert.equal((await keptTraces(world.server.url)).find((each) => each.trial === 30).moved, true);
    await page.close();
  });
}
