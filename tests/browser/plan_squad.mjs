// The page that plans everybody: who is chosen is planned, who cannot be gets a sentence, and the page says what the route says.
import assert from 'node:assert/strict';
import { newHall, serve, test } from '../http/program.mjs';
import { get, post } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

export function planSquadTests(world) {
  test('chosen throwers are planned from the page; one without a free day is told so; the table reads on a phone', async () => {
    const store = newHall();
    const server = await serve(store, world.pages);
    const text = 'athlete,date,last_date,kind\n"Marisol Quay",2026-06-08,2026-07-05,off\n';
    assert.equal((await post(server.url, '/api/import_records', { kind: 'calendar', text, take: true })).body.taken, true);
    for (const width of [widths.desktop, widths.phone]) {
      const page = await openPage(world.browser, `${server.url}/#/plan_squad`, width);
      await page.getByLabel('First day').fill('2026-06-08');
      await page.locator('summary').click();
      for (const name of ['Marisol Quay', 'Tuva Skagen', 'Finn Abernarrow']) await page.getByLabel(name, { exact: true }).check();
      assert.deepEqual(await violations(page), []);
      const begun = page.waitForResponse((each) => each.url().endsWith('/api/plan_squad') && each.request().postData()?.includes('begin'));
      await page.getByRole('button', { name: 'Plan', exact: true }).click();
      await begun; // before, "Done" is that of the squad before
      const look = async () => (await post(server.url, '/api/plan_squad', { step: 'look' })).body;
      let body = await look();
      for (const until = Date.now() + 120000; body.lines.some((each) => each.outcome === 'waiting') && Date.now() < until; body = await look())
        await page.waitForTimeout(100);
      await page.getByText(/^Done: 2 planned, 1 refused/).waitFor();
      for (const line of body.lines) for (const part of [line.name, line.words]) await page.locator('main').filter({ hasText: part }).waitFor();
      assert.equal(body.lines.find((each) => each.name === 'Marisol Quay').outcome, 'refused');
      assert.deepEqual(await violations(page), []);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), 'no sideways scroll');
      await picture(page, world.pictures, `squad-${width}`);
      await page.getByRole('link', { name: /^Tuva Skagen/ }).click();
      await page.getByRole('heading', { name: /Tuva Skagen/ }).waitFor();
      await page.close();
    }
    assert.equal((await get(server.url, '/api/block?block=tuva-skagen-2026-06-08')).status, 200);
    await server.kill();
  });
}
