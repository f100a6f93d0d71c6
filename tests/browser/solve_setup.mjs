// Set-ups: a slider moves number and figure, two stand side by side, a search goes onto the sliders, an extreme says what
// stops it; every number shown is the route's, and the card fits one page.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const plain = (text) => text.replace(/\s+/g, ' ').replaceAll('\u2212', '-');
const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
const withUnit = (shown) => `${fixed(shown.value, shown.decimals)} ${shown.unit}`;
const between = (shown) => `${fixed(shown.low, shown.decimals)} to ${fixed(shown.high, shown.decimals)}`;
const sheets = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;

export function solveSetupTests(world) {
  const slider = (page, key) => page.locator(`[data-setting=${key}] input[type=range]`);
  const textOf = async (page) => plain(await page.locator('main').innerText());
  // A page, and what it asks: how many set-ups are asked for at once, and the address of the last.
  async function open(name = 'solve_setup/marisol-quay', width) {
    const page = await openPage(world.browser, `${world.server.url}/#/${name}`, width);
    const heard = (page.heard = { underWay: 0, most: 0, url: '' });
    const ours = (request) => request.url().includes('/api/solve_setup');
    page.on('request', (request) => ours(request) && (heard.most = Math.max(heard.most, (heard.underWay += 1))));
    page.on('response', (response) => ours(response.request()) && ((heard.underWay -= 1), (heard.url = response.url())));
    return page;
  }
  // Until nothing has been asked for a tenth of a second.
  async function settled(page) {
    for (let calm = 0; calm < 4; calm += 1) {
      await page.waitForTimeout(25);
      if (page.heard.underWay) calm = -1;
    }
  }
  const answerTo = async (page) => get(world.server.url, new URL(page.heard.url).pathname + new URL(page.heard.url).search);
  const kneeAt = (page) => page.locator('svg[role=img] .lead circle').nth(1).getAttribute('cx').then(Number);

  test('a slider moved by the keyboard moves its number and the figure, and what is shown is the route’s answer', async () => {
    const page = await open();
    const before = await kneeAt(page);
    await slider(page, 'trunk_lean').focus();
    for (let i = 0; i < 8; i += 1) await page.keyboard.press('ArrowRight');
    await settled(page);
    assert.equal(page.heard.most, 1, 'one question under way at a time');
    const { body: answer } = await answerTo(page);
    const lean = answer.settings.find((each) => each.key === 'trunk_lean');
    assert.equal(lean.how, 'given');
    assert.equal(await slider(page, 'trunk_lean').inputValue(), String(lean.value));
    assert.notEqual(await kneeAt(page), before);
    const text = await textOf(page);
    for (const joint of answer.joints) assert.ok(text.includes(plain(`${withUnit(joint.moment)} (80 %: ${between(joint.moment)})`)), joint.joint);
    assert.ok(text.includes(plain(`${withUnit(answer.hip_share)} (80 %: ${between(answer.hip_share)})`)));
    assert.ok(text.includes(plain(answer.cannot_tell)));
    assert.deepEqual(await violations(page), []);
    await page.close();
  });
  test('an arc sweeps as far as its key says the newton-metres of the route are', async () => {
    const page = await open();
    await page.getByRole('button', { name: /^more: / }).first().click();
    await settled(page);
    const { body: answer } = await answerTo(page);
    const quarter = Number((await page.locator('svg[role=img] .scales text').first().textContent()).replace(' N m', ''));
    for (const joint of answer.joints.filter((each) => each.joint.startsWith('lead_'))) {
      const sweep = Number(await page.locator(`svg[role=img] [data-joint=${joint.joint}]`).first().getAttribute('data-sweep'));
      assert.ok(Math.abs(sweep - (90 * Math.abs(joint.moment.value)) / quarter) < 0.01, joint.joint);
    }
    await page.close();
  });
  test('while a slider runs from end to end the scale of the drawing never changes', async () => {
    const page = await open();
    const length = async () => (await page.locator('svg[role=img] .scales .rule').first().getAttribute('d')).match(/h([\d.]+)/)[1];
    const before = await length();
    for (const key of ['stance', 'pad', 'trunk_lean', 'thigh'])
      for (const end of ['End', 'Home']) {
        await slider(page, key).focus();
        await page.keyboard.press(end);
        await settled(page);
        assert.equal(await length(), before, `${key} ${end}`);
      }
    await page.close();
  });
  test('what balance solves can be set instead, and then the other is solved', async () => {
    const page = await open();
    assert.equal(await slider(page, 'shin_lean').count(), 0);
    await page.getByRole('button', { name: /^Set this instead: .*shin/i }).click();
    await slider(page, 'shin_lean').waitFor();
    await settled(page);
    assert.equal(await slider(page, 'trunk_lean').count(), 0);
    await page.close();
  });
  test('an extreme keeps the last figure, faded, and says what stops it in the route’s sentence', async () => {
    const page = await open();
    for (const [key, end] of [['thigh', 'Home'], ['stance', 'End'], ['trunk_lean', 'End']]) {
      await slider(page, key).focus();
      await page.keyboard.press(end);
      await settled(page);
      if (await page.locator('.stops').count()) break;
    }
    const { status, body } = await answerTo(page);
    assert.equal(status, 422);
    assert.ok(plain(await page.locator('.stops').innerText()).includes(plain(body.refusal.sentence)));
    assert.equal(await page.locator('.faded svg[role=img]').count(), 1);
    await picture(page, world.pictures, 'set-up-refused');
    await page.getByRole('button', { name: 'All back to the usual' }).click();
    await settled(page);
    assert.equal(await page.locator('.stops').count(), 0);
    await page.close();
  });
  test('two set-ups stand side by side to one scale, with a table of what differs; on a phone below each other', async () => {
    for (const [device, width] of Object.entries(widths)) {
      const page = await open(undefined, width);
      await page.getByRole('button', { name: 'Keep this one beside' }).click();
      await slider(page, 'trunk_lean').focus();
      for (let i = 0; i < 12; i += 1) await page.keyboard.press('ArrowRight');
      await settled(page);
      const figures = page.locator('.figures svg[role=img]');
      assert.equal(await figures.count(), 2);
      const boxes = await figures.evaluateAll((all) => all.map((each) => ({ ...each.getBoundingClientRect().toJSON(), rule: each.querySelector('.rule').getAttribute('d').match(/h([\d.]+)/)[1] })));
      assert.equal(boxes[0].rule, boxes[1].rule);
      assert.equal(device === 'phone', boxes[1].top >= boxes[0].bottom);
      const rows = await page.locator('.differences tbody tr').allInnerTexts();
      assert.ok(rows.some((row) => /trunk/i.test(row)), rows.join('; '));
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
      await picture(page, world.pictures, `two-set-ups-${device}`);
      await page.getByRole('button', { name: 'Let the kept one go' }).click();
      assert.equal(await figures.count(), 1);
      await page.close();
    }
  });
  test('on a phone the figure stays in sight and never lies over the slider that holds the focus', async () => {
    const page = await open(undefined, widths.phone);
    for (const key of ['load', 'stance', 'pad', 'trunk_lean', 'thigh', 'pad', 'stance', 'load']) {
      await slider(page, key).focus();
      await page.keyboard.press('ArrowRight');
      await settled(page);
      const figure = await page.locator('.live').boundingBox();
      const here = await slider(page, key).boundingBox();
      assert.ok(figure.y > -1 && here.y >= figure.y + figure.height - 1, `${key}: slider at ${here.y}, figure until ${figure.y + figure.height}`);
      assert.ok(here.y + here.height <= 900, key);
    }
    await page.close();
  });
  test('a search finds the set-up, says so in the route’s words and goes onto the slider', async () => {
    const page = await open();
    await page.getByLabel('Wanted').fill('60');
    await page.getByRole('button', { name: 'Find it' }).click();
    await page.locator('.found').waitFor();
    await settled(page);
    const { body: answer } = await answerTo(page);
    assert.equal(new URL(page.heard.url).searchParams.get('want'), 'hip_share');
    assert.ok(plain(await page.locator('.found').innerText()).includes(plain(answer.search.words)));
    const found = answer.settings.find((each) => each.how === 'found');
    const shown = await page.locator(`[data-setting=${found.key}] output`).innerText();
    assert.ok(plain(shown).startsWith(fixed(found.value, found.decimals)), shown);
    await page.getByLabel('Wanted').fill('6o');
    await page.getByRole('button', { name: 'Find it' }).click();
    await page.locator('form .refusal').filter({ hasText: '6o' }).waitFor();
    await page.close();
  });
  test('the same for the lead leg, held otherwise, is the route’s table', async () => {
    const page = await open();
    const asked = page.waitForResponse((response) => response.url().includes('/api/solve_equivalent'));
    await page.getByRole('button', { name: /^more: / }).first().click();
    const answer = await (await asked).json();
    await settled(page);
    const text = await textOf(page);
    for (const each of answer.equivalents) {
      assert.ok(text.includes(plain(each.hold_name)), each.hold);
      if (each.load) assert.ok(text.includes(plain(`${withUnit(each.load)} (80 %: ${between(each.load)})`)), each.hold);
    }
    await page.close();
  });
  test('without a thrower, sex, stature and body mass are typed; a mistyped one is refused', async () => {
    const page = await open('solve_setup');
    await page.getByLabel('Stature, in').fill('59');
    await settled(page);
    await page.locator('.figures svg[role=img]').waitFor();
    await page.getByLabel('Stature, in').fill('5g');
    await page.locator('.refusal').filter({ hasText: '5g' }).waitFor();
    await page.close();
  });
  for (const paper of ['Letter', 'A4'])
    test(`the card for the rack is one page of ${paper} with every line of the route's card`, async () => {
      const page = await open();
        await page.getByRole('button', { name: /^more: / }).first().click();
      await settled(page);
      const { body: answer } = await answerTo(page);
      await page.emulateMedia({ media: 'print' });
      const card = plain(await page.locator('.card').innerText());
      for (const line of [answer.body.name, ...answer.card, ...answer.cautions]) assert.ok(card.includes(plain(line)), line);
      assert.ok(await page.locator('.card svg[role=img]').isVisible());
      assert.equal(await page.locator('.sliders').isVisible(), false);
      await picture(page, world.pictures, 'set-up-card');
      assert.equal(sheets(await page.pdf({ format: paper })), 1);
      await page.close();
    });
}
