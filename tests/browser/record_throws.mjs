// Throws written down: a thrower's own on a phone, a whole group's after practice, and both when the server is away.
import assert from 'node:assert/strict';
import { serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

// What is held of a thrower's day, in the server's words: "Bullpen, 20 throws. ..."
const heldOf = async (world, athlete, date) =>
  (await get(world.server.url, `/api/check_arm?athlete=${athlete}&days=7`)).body.ledger.find((each) => each.date === date).entries;
const back = async (world) => (world.server = await serve(world.store, world.pages, world.server.port));

// Counts what a hand does: a click anywhere, and each field that is typed into.
const countActions = (page) =>
  page.evaluate(() => {
    window.taps = 0;
    window.typed = new Set();
    document.addEventListener('pointerdown', () => (window.taps += 1), true);
    document.addEventListener('input', (event) => event.target.matches('input[inputmode]') && window.typed.add(event.target), true);
  });
const actions = (page) => page.evaluate(() => ({ taps: window.taps, typed: window.typed.size }));

export function recordThrowsTests(world) {
  test('a thrower writes a bullpen down on a phone: four taps and one number', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/record_throws/wade-corrigane`, widths.phone);
    await countActions(page);
    await page.getByRole('radio', { name: 'bullpen', exact: true }).check();
    await page.getByLabel('Throws', { exact: true }).click();
    await page.keyboard.type('2o');
    await page.getByRole('group', { name: 'Soreness after (0 to 10)' }).getByRole('radio', { name: '2', exact: true }).check();
    await page.getByRole('button', { name: 'Keep these throws' }).click();
    assert.deepEqual(await actions(page), { taps: 4, typed: 1 });
    await page.getByText(/must be a (whole )?number/).waitFor(); // 2o is no number: refused beside its field
    assert.deepEqual(await heldOf(world, 'wade-corrigane', '2026-06-01'), []);
    await page.getByLabel('Throws', { exact: true }).fill('20');
    await page.getByRole('button', { name: 'Keep these throws' }).click();
    const kept = page.locator('section.kept');
    await kept.getByText('Kept.').waitFor();
    const held = await heldOf(world, 'wade-corrigane', '2026-06-01');
    assert.equal(held.length, 1);
    assert.match(held[0], /^Bullpen, 20 throws.*2 after/);
    const words = (await get(world.server.url, '/api/athlete_record?athlete=wade-corrigane')).body.throwing_words;
    assert.ok((await kept.innerText()).includes(words.split('.')[0]));
    await page.getByText(held[0]).waitFor(); // what is written down of the day
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'throws-kept-phone');
    await page.close();
  });
  test('other numbers are asked about: a second of that day, or a correction with name and reason', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/record_throws/wade-corrigane`);
    const write = async (count) => {
      await page.getByRole('radio', { name: 'bullpen', exact: true }).check();
      await page.getByLabel('Throws', { exact: true }).fill(count);
      await page.getByRole('button', { name: 'Keep these throws' }).click();
    };
    await write('25');
    await page.getByRole('button', { name: 'It was the second that day' }).click();
    await page.locator('section.kept').waitFor();
    await write('31');
    await page.getByLabel('Who corrects it').waitFor();
    await page.getByLabel('Throws', { exact: true }).fill('30'); // the correction would keep the 31 that was asked about
    await page.getByLabel('Who corrects it').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Keep these throws' }).click();
    await page.getByLabel('Who corrects it').fill('Wade Corrigane');
    await page.getByLabel(/^Why/).fill('ten of them stood on the other sheet');
    await page.getByRole('button', { name: 'Keep the correction' }).click();
    await page.getByText('Corrected.').waitFor();
    const held = (await heldOf(world, 'wade-corrigane', '2026-06-01')).map((each) => each.match(/\d+ throws/)[0]);
    assert.deepEqual(held.sort(), ['25 throws', '30 throws'], 'the wrong 20 are not among the throws any more');
    await page.close();
  });
  test('throws written while the server is dead arrive once', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/record_throws/casimir-holt`, widths.phone);
    await page.getByRole('radio', { name: 'javelin', exact: true }).check();
    await world.server.kill('SIGKILL');
    for (let i = 0; i < 3; i += 1) await page.getByRole('button', { name: 'Throws: 5 more' }).click();
    await page.getByRole('button', { name: 'Keep these throws' }).click();
    await page.getByText('Kept on this device').first().waitFor();
    await back(world);
    const arrived = page.waitForResponse('**/api/record_throws');
    await page.reload();
    await arrived;
    const held = await heldOf(world, 'casimir-holt', '2026-06-01');
    assert.equal(held.length, 1);
    assert.match(held[0], /^Javelin, 15 throws/);
    await page.close();
  });
  test('a day written down as without throws is corrected, and the day after is asked about once', async () => {
    assert.match((await heldOf(world, 'casimir-holt', '2026-05-31'))[0], /^No throws/);
    const page = await openPage(world.browser, `${world.server.url}/#/record_throws/casimir-holt`, widths.phone);
    await page.getByLabel('Day').fill('2026-05-31');
    await page.getByRole('radio', { name: 'javelin', exact: true }).check();
    await page.getByLabel('Throws', { exact: true }).fill('12');
    await page.getByRole('button', { name: 'Keep these throws' }).click();
    await page.getByLabel('Who corrects it').fill('Casimir Holt');
    await page.getByLabel(/^Why/).fill('threw on the beach after all');
    await page.getByRole('button', { name: 'Keep the correction' }).click();
    await page.getByText('Corrected.').waitFor();
    await page.reload();
    await page.getByText('After 12 throws, javelin yesterday').waitFor();
    await page.getByRole('group', { name: 'How is the arm today?' }).getByRole('radio', { name: '3' }).check();
    await page.getByRole('button', { name: 'Keep how it is today' }).click();
    await page.getByText('soreness not known before is added').waitFor();
    const held = await heldOf(world, 'casimir-holt', '2026-05-31');
    assert.equal(held.length, 1);
    assert.match(held[0], /^Javelin, 12 throws.*3 (the )?next day/);
    assert.equal(await page.getByText('How is the arm today?').count(), 0);
    await page.close();
  });
  test('twelve throwers after practice, one absent and one with another count: 7 taps and 2 typed numbers', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/record_practice`, widths.phone);
    await countActions(page);
    await page.getByRole('radio', { name: 'ball drill', exact: true }).check();
    await page.getByLabel('Throws each', { exact: true }).fill('40');
    await page.getByRole('radio', { name: '80', exact: true }).check();
    await page.getByRole('button', { name: 'softball' }).click();
    await page.getByLabel('Add others').check(); // eleven play softball; Wade Corrigane threw with them
    await page.getByLabel('Wade Corrigane', { exact: true }).check();
    await page.getByLabel('Amara Tidewell: no throws').check();
    await page.getByLabel('Greta Holloway: throws, when different').fill('25');
    await page.getByRole('button', { name: 'Keep the throws of 12 throwers' }).click();
    await page.getByText('12 kept, 0 were kept before.').waitFor();
    assert.deepEqual(await actions(page), { taps: 7, typed: 2 });
    assert.match((await heldOf(world, 'amara-tidewell', '2026-06-01'))[0], /^No throws/);
    assert.match((await heldOf(world, 'greta-holloway', '2026-06-01'))[0], /^Ball drill, 25 throws/);
    for (const athlete of ['tuva-skagen', 'noor-ashgrove', 'yara-kestrel', 'wade-corrigane'])
      assert.ok((await heldOf(world, athlete, '2026-06-01')).some((each) => each.startsWith('Ball drill, 40 throws')), athlete);
    const lines = page.locator('li.said');
    assert.equal(await lines.count(), 12);
    assert.equal(await lines.getByText('40 throws').count(), 10);
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'practice-kept-phone');
    await page.getByLabel('Greta Holloway: throws, when different').fill('26'); // another practice than the one that was kept
    await page.getByRole('button', { name: 'Keep the throws of 12 throwers' }).waitFor();
    assert.equal(await page.getByText('12 kept, 0 were kept before.').count(), 0);
    await page.close();
  });
  test('a refused line is said beside its thrower, nothing is kept, and what was typed outlives the page', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/record_practice`);
    await page.getByRole('radio', { name: 'flat ground', exact: true }).check();
    await page.getByLabel('Throws each', { exact: true }).fill('30');
    await page.getByRole('button', { name: 'Upland Otters' }).click();
    const row = page.locator('[data-thrower=mateo-lindqvist]');
    await row.getByLabel('Mateo Lindqvist: throws, when different').fill('500');
    await page.getByRole('button', { name: /^Keep the throws/ }).click();
    await row.locator('.refusal').filter({ hasText: '500' }).waitFor();
    assert.deepEqual(await heldOf(world, 'caleb-underhaugh', '2026-06-01'), []);
    await page.reload();
    assert.equal(await row.getByLabel('Mateo Lindqvist: throws, when different').inputValue(), '500');
    await world.server.kill('SIGKILL');
    await row.getByLabel('Mateo Lindqvist: throws, when different').fill('20');
    await page.getByRole('button', { name: /^Keep the throws/ }).click();
    await page.getByText('Kept on this device').first().waitFor();
    await back(world);
    await page.getByRole('button', { name: /^Keep the throws/ }).click(); // pressed again: the same practice
    await page.getByText(/were kept before/).waitFor();
    const arrived = page.waitForResponse('**/api/record_practice'); // and the one that waited on the device
    await page.reload();
    assert.equal((await arrived).status(), 200);
    for (const [athlete, throws] of [['mateo-lindqvist', 20], ['caleb-underhaugh', 30]]) {
      const held = await heldOf(world, athlete, '2026-06-01');
      assert.equal(held.length, 1, athlete);
      assert.match(held[0], new RegExp(`^Flat ground, ${throws} throws`));
    }
    await page.close();
  });
}
