// Load a bar: what is drawn is what this gym can make; a wrong target is refused in a sentence.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage } from './browser.mjs';

export function loadBarTests(world) {
  test('the buttons step the target, and every load is the answer for it', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/load_bar`);
    await page.getByRole('button', { name: '45 lb more' }).click();
    await page.getByRole('button', { name: '10 lb less' }).click();
    assert.equal(await page.getByLabel('Wanted').inputValue(), '170');
    const answer = (await get(world.server.url, '/api/load_bar?kit=saltgrass-hall&means=straight_bar&target_lb=170')).body;
    for (const load of [answer.nearest, answer.not_above, answer.above]) await page.getByText(load.words, { exact: true }).first().waitFor();
    for (const line of answer.warm_up) await page.getByText(line.load.words).first().waitFor();
    const drawn = await page.locator('.sleeve').first().locator('.plate').allInnerTexts();
    assert.deepEqual(drawn.map(Number), answer.nearest.one_side.flatMap((plate) => Array(plate.count).fill(plate.mass)));
    await page.close();
  });
  test('one bar can be chosen by its label: the two handles of the hex bar differ', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/load_bar`);
    await page.getByLabel('Bar or tool').selectOption('hex_bar');
    await page.getByLabel('Which one').selectOption('hex bar, low handles');
    await page.getByText(/^hex bar, low handles \+/).first().waitFor();
    await page.close();
  });
  test('a target that is no number, and a tool the gym has not, are refused beside the form', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/load_bar`);
    await page.getByLabel('Wanted').fill('1o5');
    await page.getByText(/1o5/).waitFor();
    assert.equal(await page.locator('.sleeve').count(), 0);
    await page.getByLabel('Wanted').fill('105');
    await page.locator('.sleeve').first().waitFor();
    await page.getByLabel('Gym').selectOption('tuva-s-garage');
    await page.locator('.refusal').waitFor();
    await page.close();
  });
}
