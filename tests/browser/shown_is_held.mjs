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
        assert.ok(text.includes(line.dose.replace(' x ', ' × ')), line.dose);
        assert.ok(text.includes(line.purpose), line.purpose);
      }
    await page.close();
  });
  test('the test day shows every thrower with the interval expected of a new test', async () => {
    const { squad } = (await get(world.server.url, '/api/test_day')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/test_day`);
    const text = await textOf(page);
    for (const { name, expected } of squad) {
      assert.ok(text.includes(name), name);
      const interval = expected.find((each) => each.test === 'throwing_velocity')?.interval;
      if (interval) assert.ok(text.includes(`${fixed(interval.low, interval.decimals)} to ${fixed(interval.high, interval.decimals)} ${interval.unit}`), name);
    }
    await page.close();
  });
  test('the page to choose a block by names every thrower', async () => {
    const { throwers } = (await get(world.server.url, '/api/roster')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block`);
    assert.deepEqual((await page.locator('main li a').allInnerTexts()).sort(), throwers.map((each) => each.name).sort());
    await page.close();
  });
  test('the methods page names every method of the answer', async () => {
    const { methods } = (await get(world.server.url, '/api/method')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/method`);
    const links = await page.locator('main a').evaluateAll((all) => all.map((each) => each.getAttribute('href')));
    for (const { name } of methods) assert.ok(links.includes(`#/method/${name}`), name);
    await page.close();
  });
}
