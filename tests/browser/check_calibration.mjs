// The page that counts how often the intervals were right: every number is the route's, in words and in the drawing's own text.
import assert from 'node:assert/strict';
import { newStore, serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => { const text = x.toFixed(decimals); return /[1-9]/.test(text) ? text.replace('-', '\u2212') : text.replace('-', ''); };
const signed = (x, decimals) => (x > 0 && /[1-9]/.test(fixed(x, decimals)) ? `+${fixed(x, decimals)}` : fixed(x, decimals));
const percent = (share) => fixed(100 * share, 0);
const plain = (text) => text.replace(/\s+/g, ' ').trim();
const counted = ({ held, all, low, high }) => `${held} of ${all} inside, ${percent(held / all)} % (true rate ${percent(low)} to ${percent(high)} %)`;
const said = { as_stated: 'as stated', too_sure: 'too narrow', too_cautious: 'too wide', cannot_tell: 'cannot tell' };

async function opened(world, width) {
  const page = await openPage(world.browser, `${world.server.url}/#/check_calibration`, width);
  await page.getByRole('heading', { name: 'Test by test' }).waitFor({ timeout: 120000 });
  return page;
}

async function assertParts(page, name, counts) {
  const drawing = page.getByRole('img', { name: `${name}, ten equal parts from low to high: ${counts.join(', ')}.` });
  assert.equal(await drawing.count(), 1, name);
  assert.deepEqual(await drawing.locator('text').allTextContents().then((all) => all.map(Number)), counts);
  const heights = await drawing.locator('rect').evaluateAll((all) => all.map((each) => Number(each.getAttribute('height'))));
  const most = Math.max(...counts); // as tall as its share of the most frequent
  counts.forEach((count, i) => assert.ok(Math.abs(heights[i] / Math.max(...heights) - count / most) < 0.01, `part ${i}`));
}

export function checkCalibrationTests(world) {
  test('every count, rate and verdict on the page of the intervals is the route’s, overall and test by test', async () => {
    const { body } = await get(world.server.url, '/api/check_calibration');
    const page = await opened(world);
    const text = plain(await page.locator('main').innerText());
    for (const line of [...body.words, ...body.cautions]) assert.ok(text.includes(plain(line)), line);
    assert.ok(text.includes(`${body.athletes} throwers, ${body.results} results held back`), text.slice(0, 400));
    const lines = (await page.locator('.line').allInnerTexts()).map(plain);
    assert.deepEqual(lines, body.coverage.map((each) => `${percent(each.stated)} % intervals ${counted(each)}`));
    const rows = (await page.locator('tbody tr').allInnerTexts()).map(plain);
    assert.equal(rows.length, body.tests.length);
    body.tests.forEach(({ name, coverage, verdict, better }, i) => {
      assert.ok(rows[i].includes(name) && rows[i].includes(counted(coverage)), `${rows[i]}: ${counted(coverage)}`);
      assert.ok(rows[i].includes(said[verdict]), rows[i]);
      const gain = better ? `${signed(better.value, 0)} % (80 %: ${signed(better.low, 0)} to ${signed(better.high, 0)})` : 'too few results';
      assert.ok(rows[i].includes(gain), `${rows[i]}: ${gain}`);
    });
    await assertParts(page, 'Where the results fell within their forecasts', body.transform);
    assert.ok(text.includes(`were the forecasts right: ${percent(body.transform_chance)} %`), `${body.transform_chance}`);
    await page.close();
  });
  test('the mark on each bar stands at the share the interval states, and the bar ends at what was held', async () => {
    const { body } = await get(world.server.url, '/api/check_calibration');
    const page = await opened(world);
    const drawn = await page.locator('.line svg').evaluateAll((all) => all.map((each) => {
      const at = (name, key) => Number(each.querySelector(name).getAttribute(key));
      const from = at('.all', 'x');
      return { stated: (at('.stated', 'x1') - from) / at('.all', 'width'), held: at('.held', 'width') / at('.all', 'width'),
               low: (at('.rate', 'x1') - from) / at('.all', 'width'), high: (at('.rate', 'x2') - from) / at('.all', 'width') };
    }));
    body.coverage.forEach((each, i) => {
      for (const [key, expected] of Object.entries({ stated: each.stated, held: each.held / each.all, low: each.low, high: each.high }))
        assert.ok(Math.abs(drawn[i][key] - expected) < 0.005, `${key} of ${each.stated}: ${drawn[i][key]}, ${expected}`);
    });
    await page.close();
  });
  test('rosters are simulated when asked, and the page says where the known slopes lie', async () => {
    const page = await opened(world, widths.phone);
    // The button's twenty take a minute of this test; the route is asked for two, and the page shows what it is given.
    await page.route('**/api/check_calibration?ranks=20', (route) => route.continue({ url: route.request().url().replace('ranks=20', 'ranks=2') }));
    const shown = page.waitForResponse((each) => each.url().includes('ranks='), { timeout: 120000 });
    await page.getByRole('button', { name: 'Simulate 20 rosters' }).click();
    await page.getByText('20 rosters are being simulated').waitFor();
    const body = await (await shown).json(); // the very answer the page was given
    assert.equal(body.ranks.fitted + body.ranks.refused, 2);
    await page.getByText(`${body.ranks.slopes} known slopes of ${body.ranks.fitted} simulated rosters`).waitFor();
    await assertParts(page, 'Known slopes within what the fit says of them', body.ranks.counts);
    assert.ok(plain(await page.locator('main').innerText()).includes(plain(body.words.at(-1))));
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'known-slopes-phone');
    await page.close();
  });
  test('a gym without records is told why nothing can be counted', async () => {
    const server = await serve(newStore(), world.pages);
    const { refusal } = (await get(server.url, '/api/check_calibration')).body;
    const page = await openPage(world.browser, `${server.url}/#/check_calibration`);
    await page.getByText(refusal.sentence).waitFor();
    assert.equal(await page.locator('table').count(), 0);
    await page.close();
    await server.kill();
  });
  test('what goes with velocity leads to it', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/explain_velocity`);
    await page.getByRole('link', { name: 'Were the intervals right here?' }).click();
    await page.getByRole('heading', { level: 1, name: 'Were the intervals right here?' }).waitFor();
    await page.close();
  });
}
