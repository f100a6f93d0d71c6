// Racks at once: each card shows the sets, plates and handlings of the route's answer, and is one sheet of paper.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { post } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const plain = (mass) => String(Number(mass.toFixed(2)));
// Plates are called by their stamp: "35 lb plate, old" is "35 old" in a hall that speaks pounds.
const nameOf = (label) => label.replace(/ lb plate,?/, '');
const oneByOne = (runs) => runs.flatMap((run) => Array(run.count).fill(nameOf(run.label)));
const squeezed = (text) => text.replace(/\s+/g, ' ').trim();
const sheets = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;

async function holdsAnswer(page, answer) {
  const found = squeezed(await page.locator('.found').innerText()).replaceAll('\u00a0', ' ');
  for (const line of answer.words) assert.ok(found.includes(line), line);
  const cards = await page.locator('.card').all();
  assert.equal(cards.length, answer.racks.length);
  for (const [r, rack] of answer.racks.entries()) {
    const text = squeezed(await cards[r].innerText());
    assert.ok(text.startsWith(rack.name), text);
    assert.ok(text.includes(`Beside the rack: ${rack.plates.map((each) => `${each.count} × ${nameOf(each.label)}`).join(', ')}`), text);
    const rows = await cards[r].locator('li').all();
    const sets = rack.bars.flatMap((bar) => bar.sets.map((set, t) => ({ set, before: t ? bar.sets[t - 1].load.one_side : [] })));
    assert.equal(rows.length, sets.length);
    for (const [t, { set, before }] of sets.entries()) {
      assert.equal(await rows[t].locator('.load').innerText(), `${set.load.total.toFixed(1)} ${answer.unit}`);
      const plates = oneByOne(set.load.one_side);
      assert.equal(await rows[t].locator('.stack').innerText(), plates.join(', ') || 'empty bar');
      assert.deepEqual(await rows[t].locator('svg text:not(.mark)').allTextContents(), plates);
      assert.equal(await rows[t].locator('svg').getAttribute('aria-label'), `Drawn to scale, innermost plate first: ${set.load.words}`);
      // What comes off and goes on is as many plates as the route says are handled, and leads from set to set.
      const moves = squeezed(await rows[t].locator('.moves').innerText());
      const listed = (word) => (moves.match(new RegExp(`${word} ([^;(]*)`))?.[1] ?? '').trim().split(', ').filter(Boolean);
      const off = listed('off'), on = listed('on'), was = oneByOne(before);
      assert.equal(off.length + on.length, set.moves, moves);
      assert.ok(moves.includes(`(${set.moves})`), moves);
      assert.deepEqual([...was.slice(0, was.length - off.length), ...on], plates, moves);
    }
    for (const bar of rack.bars) {
      assert.ok(text.includes(`${bar.item}, ${plain(bar.bar)} ${answer.unit}`), bar.item);
      assert.ok(text.includes(`(${bar.strip})`), `strip ${bar.strip}`);
      assert.ok(text.includes(`${bar.moves} handled a side in all; the usual way ${bar.usual_moves}.`), bar.item);
    }
    for (const note of rack.notes) assert.ok(text.includes(note), note);
  }
}

export function loadRacksTests(world) {
  const listed = { kit: 'saltgrass-hall', racks: [{ means: 'straight_bar', loads_lb: [135, 185, 225, 205] }, { name: 'By the door', means: 'safety_bar', loads_lb: [155, 245, 290] }] };
  async function twoRacks(width) {
    const page = await openPage(world.browser, `${world.server.url}/#/load_racks`, width);
    await page.getByRole('button', { name: 'One rack more' }).click();
    const second = page.getByRole('group', { name: 'Rack 2' });
    await second.getByLabel(/^Bar/).selectOption('safety_bar');
    await second.getByLabel('Loads of the sets').fill('155 245, 290');
    await second.getByLabel('Name').fill('By the door');
    await page.getByRole('button', { name: 'Stack the plates' }).click();
    await page.getByRole('heading', { name: 'By the door' }).waitFor();
    return page;
  }
  test('two racks from lists: cards, drawings and handlings are the answer of the route', async () => {
    const { body } = await post(world.server.url, '/api/load_racks', listed);
    const page = await twoRacks();
    await holdsAnswer(page, body);
    await page.close();
  });
  test('a rack from a session of a kept block stands as the route answers it', async () => {
    const answers = [];
    for (const session of [1, 2, 3]) answers.push(await post(world.server.url, '/api/load_racks', { racks: [{ block: 'marisol-quay', week: 1, session }] }));
    const place = answers.findIndex((each) => each.status === 200); // which session has a bar is the planner's to say
    const { body } = answers[place];
    const page = await openPage(world.browser, `${world.server.url}/#/load_racks/marisol-quay`);
    await page.getByLabel('Session', { exact: true }).fill(String(place + 1));
    await page.getByRole('button', { name: 'Stack the plates' }).click();
    await page.locator('.card').waitFor();
    await holdsAnswer(page, body);
    await page.close();
  });
  for (const [device, width] of Object.entries(widths))
    test(`the cards of two racks on a ${device}`, async () => {
      const page = await twoRacks(width);
      const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      assert.ok(beyond <= 0, `${beyond} px beyond`);
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `racks-${device}`);
      await page.close();
    });
  test('on paper each rack is one card, and the form stays on the screen', async () => {
    const page = await twoRacks();
    assert.equal(sheets(await page.pdf({ format: 'Letter' })), 2);
    assert.equal(sheets(await page.pdf({ format: 'A4' })), 2);
    await page.getByLabel('Loads of the sets').first().fill('95 135 155 185 205 225 245 205');
    await page.getByRole('button', { name: 'Stack the plates' }).click();
    await page.locator('.card').first().locator('li').nth(7).waitFor();
    assert.equal(sheets(await page.pdf({ format: 'Letter' })), 2, 'eight sets are still one card');
    await page.emulateMedia({ media: 'print' });
    assert.deepEqual(await violations(page), []);
    assert.equal(await page.getByRole('button', { name: 'Stack the plates' }).isVisible(), false);
    const size = await page.locator('.load').first().evaluate((each) => parseFloat(getComputedStyle(each).fontSize) * 0.75);
    assert.ok(size >= 18, `loads are ${size} pt on paper`); // to be read at arm's length
    await picture(page, world.pictures, 'racks-print');
    await page.close();
  });
  test('what no rack can make is refused beside the form', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/load_racks`);
    const loads = page.getByLabel('Loads of the sets');
    await loads.fill('1o5');
    await page.getByRole('button', { name: 'Stack the plates' }).click();
    await page.locator('.refusal').waitFor();
    assert.equal(await page.locator('.card').count(), 0);
    await loads.fill('');
    await page.getByRole('button', { name: 'Stack the plates' }).click();
    await page.locator('.refusal').getByText('loads').waitFor();
    await page.close();
  });
}
