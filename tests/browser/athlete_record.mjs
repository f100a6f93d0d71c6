// The thrower's page: what is written down is never changed on the way, and an answer never outlives its question.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { keptLines, openPage } from './browser.mjs';

const open = async (world, athlete) => openPage(world.browser, `${world.server.url}/#/athlete_record/${athlete}`);

export function athleteRecordTests(world) {
  test('soreness that is no number is refused beside its field, and nothing is kept without it', async () => {
    const before = (await keptLines(world.server.url, 'throws')).length;
    const page = await open(world, 'wade-corrigane');
    await page.getByText('Write down throws').click();
    await page.getByLabel('Where').selectOption('bullpen');
    await page.getByLabel('Throws', { exact: true }).fill('20');
    await page.getByLabel('Soreness after (0 to 10)').fill('7 of 10');
    await page.getByRole('button', { name: 'Keep these throws' }).click();
    await page.locator('.field', { hasText: 'Soreness after' }).getByText(/must be a number/).waitFor();
    assert.equal(await page.getByLabel('Soreness after (0 to 10)').getAttribute('aria-invalid'), 'true');
    assert.equal((await keptLines(world.server.url, 'throws')).length, before);
    await page.close();
  });
  test('throws written down are kept with a decimal comma read, and the page says at once what the record says', async () => {
    const before = await keptLines(world.server.url, 'throws');
    const page = await open(world, 'wade-corrigane');
    const said = async () => page.locator('section', { has: page.getByRole('heading', { name: 'Throwing', exact: true }) }).innerText();
    const first = await said();
    await page.getByText('Write down throws').click();
    await page.getByLabel('Where').selectOption('bullpen');
    await page.getByLabel('Throws', { exact: true }).fill('20');
    await page.getByLabel('Soreness after (0 to 10)').fill('2,5');
    await page.getByRole('button', { name: 'Keep these throws' }).click();
    await page.getByText('Kept.').waitFor();
    const fresh = (await keptLines(world.server.url, 'throws')).filter((line) => !before.includes(line));
    assert.equal(fresh.length, 1);
    assert.match(fresh[0], /bullpen,20,.*2\.5/);
    const words = (await get(world.server.url, '/api/athlete_record?athlete=wade-corrigane')).body.throwing_words;
    await page.locator('section').getByText(words).waitFor();
    assert.notEqual(await said(), first);
    await page.close();
  });
  test('a judged change leaves the page when another day is chosen', async () => {
    const page = await open(world, 'odalys-fenn');
    await page.getByText('Did it really change?').click();
    await page.getByRole('button', { name: 'Judge the change' }).click();
    await page.getByText('Likely true change').waitFor();
    await page.getByRole('combobox', { name: 'From' }).selectOption({ index: 2 });
    assert.equal(await page.getByText('Likely true change').count(), 0);
    await page.close();
  });
  test('the charts of a thrower share their days', async () => {
    const page = await open(world, 'marisol-quay');
    const months = await page.locator('article:not(.large) svg.trajectory').evaluateAll((all) =>
      all.map((svg) => [...svg.querySelectorAll('line.stem')].map((tick) => Math.round(Number(tick.getAttribute('x1'))))));
    assert.ok(months.length > 10);
    for (const each of months) assert.deepEqual(each, months[0]);
    await page.close();
  });
}
