// Addresses: each page has a title of its own, a broken address says so, and going back leads to where one was.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { openPage } from './browser.mjs';

export function addressTests(world) {
  test('every page has a title of its own, the thrower’s page the name', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/athlete_record/marisol-quay`);
    assert.equal(await page.title(), 'Marisol Quay, Amentum');
    const titles = [await page.title()];
    for (const name of ['roster', 'test_day', 'plan_block', 'load_bar', 'import_records', 'record_trace', 'inspect_c3d', 'method', 'no_such_page']) {
      await page.evaluate((address) => (location.hash = address), `#/${name}`);
      await page.waitForFunction((before) => document.title !== before, titles.at(-1));
      titles.push(await page.title());
    }
    assert.equal(new Set(titles).size, titles.length, titles.join(' | '));
    await page.close();
  });
  test('an address with a lone per cent sign is an unknown thrower, not an empty screen', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/athlete_record/100%`);
    await page.getByText('There is no athlete').waitFor();
    await page.close();
  });
  test('going back leads to the same line of the list and the same search', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/roster`);
    await page.getByLabel('Find a thrower').fill('baseball');
    await page.getByRole('link', { name: 'Wade Corrigane', exact: true }).click();
    await page.getByRole('heading', { name: 'Wade Corrigane' }).waitFor();
    await page.goBack();
    await page.getByRole('link', { name: 'Wade Corrigane', exact: true }).and(page.locator(':focus')).waitFor();
    assert.equal(await page.getByLabel('Find a thrower').inputValue(), 'baseball');
    const box = await page.getByRole('link', { name: 'Wade Corrigane', exact: true }).boundingBox();
    assert.ok(box.y > 0 && box.y < 900, `the line stands at ${box.y}`);
    await page.close();
  });
  test('a page that keeps nothing on the device does not say that it does', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/import_records`);
    await page.route('**/api/**', (route) => route.abort());
    await page.getByLabel('Or paste its lines here').fill('a,b');
    await page.getByRole('button', { name: 'Show what it would do' }).click();
    const said = await page.getByRole('alert').innerText();
    assert.match(said, /does not answer/);
    assert.doesNotMatch(said, /kept/i);
    await page.close();
  });
}
