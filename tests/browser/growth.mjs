// Growth: every young thrower in the route's order with the route's numbers, and a height written down shows at once.
import assert from 'node:assert/strict';
import { newHall, serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, widths } from './browser.mjs';

const fixed = (x, decimals) => { const text = x.toFixed(decimals); return /[1-9]/.test(text) ? text.replace('-', '\u2212') : text.replace('-', ''); };
const number = (shown) => `${fixed(shown.value, shown.decimals)} ${shown.unit}`;

export function growthTests(world) {
  test('growth lists those to measure first, with rate, band and days; no score and no date', async () => {
    const { throwers } = (await get(world.server.url, '/api/growth')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/growth`);
    const lines = page.locator('article[data-athlete]');
    assert.deepEqual(await lines.evaluateAll((all) => all.map((each) => each.dataset.athlete)), throwers.map((each) => each.athlete));
    for (const [i, thrower] of throwers.entries()) {
      const text = await lines.nth(i).innerText();
      assert.ok(text.includes(thrower.rate ? number(thrower.rate) : 'cannot tell'), text);
      assert.ok(text.includes(thrower.offset_words) && text.includes(`${thrower.days_since_height} day`), text);
      const drawn = await lines.nth(i).getByRole('img').getAttribute('aria-label');
      for (const { date, height } of thrower.heights) assert.ok(drawn.includes(`${number(height)} on ${date}`), drawn);
      assert.equal(await lines.nth(i).locator('g.bar').count(), thrower.heights.length);
    }
    await page.close();
  });
  test('a height written down on the page of one thrower is there at once', async () => {
    const server = await serve(newHall(), world.pages);
    const before = (await get(server.url, '/api/growth?athlete=saoirse-mallory')).body.throwers[0];
    const page = await openPage(world.browser, `${server.url}/#/growth/saoirse-mallory`, widths.phone);
    await page.getByText(`Last height ${before.days_since_height} days ago.`).waitFor();
    await page.getByLabel('height, in').fill(fixed(before.heights.at(-1).height.value, 1));
    await page.getByRole('button', { name: 'Save, Saoirse Mallory' }).click();
    await page.getByText('Measured today.').waitFor();
    const after = (await get(server.url, '/api/growth?athlete=saoirse-mallory')).body.throwers[0];
    assert.equal(after.heights.length, before.heights.length + 1);
    assert.equal(await page.locator('g.bar').count(), after.heights.length);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    await picture(page, world.pictures, 'growth-height-phone');
    await page.close();
    await server.kill();
  });
}
