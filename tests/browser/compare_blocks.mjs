// Two blocks side by side: the numbers of the page are the route's, the address names both, blocks of two throwers are refused.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get, post } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const who = 'amara-tidewell';
const fixed = (x, decimals) => x.toFixed(decimals).replace(/^-(0(\.0*)?)$/, '$1').replace('-', '\u2212');
const plain = (text) => text.replaceAll('\u2212', '-').replace(/\s+/g, ' ');
const sets = (x) => fixed(x, Math.abs(x - Math.round(x)) < 0.05 ? 0 : 1);

export function compareBlocksTests(world) {
  let early;
  let late;
  const plan = async (body) => {
    const planned = await post(world.server.url, '/api/plan_block', { athlete: who, training_days: [], ...body });
    assert.equal(planned.status, 200, JSON.stringify(planned.body));
    return planned.body.block;
  };
  const open = (name, width) => openPage(world.browser, `${world.server.url}/#/compare_blocks/${name}`, width);

  test('with one kept block there is nothing to hold it beside, and the page says so', async () => {
    early = await plan({ start: '2026-06-08' });
    const page = await open(early);
    await page.getByText('No other block of this thrower is kept.').waitFor();
    assert.equal(await page.locator('main table').count(), 0);
    await page.close();
  });
  test('two blocks: every share and every line is the route’s, and the block’s page leads here', async () => {
    late = await plan({ start: '2026-07-06', minutes: 40, sessions_per_week: 2 });
    const answer = (await get(world.server.url, `/api/compare_blocks?block=${late}&with=${early}`)).body;
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/${who}`);
    await page.getByRole('link', { name: 'Hold it beside another block' }).click();
    await page.getByRole('heading', { name: 'Where the sheets differ most' }).waitFor();
    assert.ok(page.url().endsWith(`#/compare_blocks/${encodeURIComponent(`${late},${early}`)}`), page.url());
    const text = plain(await page.locator('main').innerText());
    const has = (part) => assert.ok(text.includes(plain(part)), `“${part}” is not on the page`);
    has(answer.words);
    for (const block of [answer.first, answer.second]) {
      for (const fact of [block.block, block.start, block.kit, `${fixed(block.minutes, 0)} minutes`, `${block.weeks} weeks`]) has(fact);
      has(block.reach ? fixed(block.reach.points, 1) : 'cannot tell');
      for (const share of block.reach?.shares ?? [])
        has(`${fixed(share.share, 0)} % (${fixed(share.share_low, 0)} to ${fixed(share.share_high, 0)}), ${fixed(share.weekly_sets, 1)} sets a week`);
    }
    const rows = await page.locator('table').last().locator('tbody tr').allInnerTexts();
    assert.equal(rows.length, answer.lines.length);
    for (const [i, line] of answer.lines.entries()) {
      const row = plain(rows[i]);
      assert.ok(row.startsWith(line.name), `${row} does not begin with ${line.name}`);
      for (const [count, load] of [[line.sets_a_week, line.load_words], [line.sets_a_week_with, line.load_words_with]])
        assert.ok(row.includes(plain(count > 0 ? `${sets(count)} a week, ${load}` : 'not in it')), `${row}: ${count} ${load}`);
    }
    await picture(page, world.pictures, 'compare-blocks');
    await page.close();
  });
  test('another block can be chosen, and the address follows', async () => {
    const page = await open(`${early},${late}`);
    await page.getByLabel('First block').selectOption(late);
    await page.getByText('Both are the same block.').waitFor();
    await page.getByLabel('Second block').selectOption(early);
    await page.getByRole('heading', { name: 'Where the sheets differ most' }).waitFor();
    assert.ok(page.url().includes(encodeURIComponent(`${late},${early}`)), page.url());
    await page.close();
  });
  test('blocks of two throwers, and a block nobody has, are refused in a sentence', async () => {
    for (const [name, said] of [[`${early},marisol-quay`, /two blocks of one thrower/], ['nobody-here', /nobody-here/]]) {
      const page = await open(name);
      await page.locator('.refusal').filter({ hasText: said }).waitFor();
      assert.equal(await page.locator('main table').count(), 0);
      await page.close();
    }
  });
  for (const [device, width] of Object.entries(widths))
    test(`two blocks side by side on a ${device}, and in print, without a violation`, async () => {
      const page = await open(`${late},${early}`, width);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), 'no sideways scroll');
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `compare-blocks-${device}`);
      await page.emulateMedia({ media: 'print' });
      assert.deepEqual(await violations(page), []);
      await page.close();
    });
}
