// No page names a number that the store does not hold: what is drawn is what the program answers.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage } from './browser.mjs';

const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
const textOf = async (page) => (await page.locator('main').innerText()).replace(/\s+/g, ' ');

export function shownIsHeldTests(world) {
  test('the roster shows every thrower with the velocity and interval of the answer', async () => {
    const { throwers } = (await get(world.server.url, '/api/roster')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/roster`);
    const text = await textOf(page);
    assert.equal(throwers.length, 36);
    for (const { name, velocity } of throwers) {
      assert.ok(text.includes(name), name);
      if (velocity) assert.ok(text.includes(`${fixed(velocity.value, velocity.decimals)} ${velocity.unit}`), `${name} ${velocity.value}`);
      if (velocity) assert.ok(text.includes(`${fixed(velocity.low, velocity.decimals)} to ${fixed(velocity.high, velocity.decimals)}`), name);
    }
    await page.close();
  });
  test('the thrower page shows each limiter and each trajectory of the answer', async () => {
    const record = (await get(world.server.url, '/api/athlete_record?athlete=marisol-quay')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/athlete_record/marisol-quay`);
    const text = await textOf(page);
    for (const line of record.limiters.limiters) assert.ok(text.includes(line.name), line.name);
    for (const sentence of record.limiters.words) assert.ok(text.includes(sentence.replace(/\s+/g, ' ').replace('Test this next: ', '').slice(0, 40)), sentence);
    for (const { now, test_name: name } of record.trajectories)
      assert.ok(text.includes(`${fixed(now.value, now.decimals)} ${now.unit}`), `${name}: ${now.value}`);
    await page.close();
  });
  test('the block page shows each line of the week with its load', async () => {
    const block = (await get(world.server.url, '/api/block?block=marisol-quay&week=1')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`);
    const text = await textOf(page);
    for (const session of block.sessions)
      for (const line of session.lines) {
        assert.ok(text.includes(line.name), line.name);
        assert.ok(text.includes(line.load_words.replace(/\s+/g, ' ')), line.load_words);
      }
    await page.close();
  });
  test('the bar page shows the plates of the answer', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/load_bar`);
    await page.getByLabel('Wanted').fill('227');
    await page.waitForLoadState('networkidle');
    const kits = (await get(world.server.url, '/api/catalogue')).body.kits;
    const answer = (await get(world.server.url, `/api/load_bar?kit=${kits[0].kit}&means=straight_bar&target_lb=227`)).body;
    await page.getByText(answer.nearest.words).first().waitFor();
    await page.close();
  });
}
