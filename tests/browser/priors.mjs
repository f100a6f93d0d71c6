// The page of beliefs before the records: its numbers are the route's, and a change shows at once, with its history.
import assert from 'node:assert/strict';
import { newHall, serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { keptLines, openPage, picture, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => { const text = x.toFixed(decimals); return /[1-9]/.test(text) ? text.replace('-', '\u2212') : text.replace('-', ''); };
const number = (shown) => `${fixed(shown.value, shown.decimals)} ${shown.unit}`;
const range = (shown) => `${fixed(shown.low, shown.decimals)} to ${fixed(shown.high, shown.decimals)}`;
const rowOf = (page, quality, nth = 0) => page.locator(`article[data-quality=${quality}]`).nth(nth);

async function assertRow(row, line) {
  const prior = await row.locator('dd.prior').innerText();
  assert.ok(prior.includes(number(line.prior)) && prior.includes(range(line.prior)), `${line.quality}: ${prior}`);
  if (!line.posterior) return;
  const posterior = await row.locator('dd.posterior').innerText();
  assert.ok(posterior.includes(number(line.posterior)) && posterior.includes(range(line.posterior)), `${line.quality}: ${posterior}`);
  assert.ok(posterior.includes(`${Math.round(100 * line.learned)} %`), posterior);
}

export function priorsTests(world) {
  test('every prior and posterior on the page is the route’s, in words and as a picture with words', async () => {
    const body = (await get(world.server.url, '/api/priors')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/priors`);
    await page.locator('article').first().waitFor();
    assert.equal(await page.locator('article').count(), body.slopes.length + body.attainable_changes.length);
    for (const line of body.slopes) {
      await assertRow(rowOf(page, line.quality), line);
      assert.ok((await rowOf(page, line.quality).getByRole('img').getAttribute('aria-label')).includes(line.words), line.quality);
    }
    assert.ok(body.slopes.filter((line) => line.posterior).length >= 10, 'the demo facility has posteriors');
    await page.close();
  });
  test('a belief is changed with author and reason, and prior, posterior and history change; then it is taken back', async () => {
    const store = newHall(); // a store of its own: the others keep the published beliefs
    const server = await serve(store, world.pages);
    const before = (await get(server.url, '/api/priors')).body.slopes.find((line) => line.quality === 'grip_strength');
    const page = await openPage(world.browser, `${server.url}/#/priors`, widths.phone);
    const row = rowOf(page, 'grip_strength');
    await row.locator('summary').click();
    await row.getByText('Never changed here.').waitFor();
    await row.getByLabel('Mean').fill('1.5');
    await row.getByLabel('Give or take').fill('0.1');
    await row.getByLabel('Who decides').fill('Halloran');
    await row.getByLabel(/^Why/).fill('our climbers grip hard and throw hard');
    await row.getByRole('button', { name: 'Keep this belief' }).click();
    await row.locator('.refusal').waitFor();
    assert.equal((await keptLines(server.url, 'prior_edits')).filter(Boolean).length, 0, 'refused, and nothing kept');
    await row.getByLabel('Mean').fill('0.6');
    await row.getByRole('button', { name: 'Keep this belief' }).click();
    await row.locator('p[role=status]').filter({ hasText: 'Kept as edit 1' }).waitFor();
    await row.locator('.history li').filter({ hasText: 'Halloran' }).waitFor();
    const after = (await get(server.url, '/api/priors')).body.slopes.find((line) => line.quality === 'grip_strength');
    // Three times the published mean of 0.20 (data/velocity_priors.csv).
    assert.ok(Math.abs(after.prior.value - 3 * before.prior.value) < 1e-9 && after.posterior.value > before.posterior.value);
    await assertRow(row, after);
    assert.match(await row.locator('dt').first().innerText(), /^Halloran's word/);
    assert.match(await page.locator('.version').innerText(), /^priors 1\.1: 1 change kept here/);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'priors-changed-phone');

    await row.getByLabel(/^Why/).fill('two seasons later: only the climbers');
    await row.getByRole('button', { name: 'Back to the published value' }).click();
    await row.locator('.history li').nth(1).waitFor();
    assert.equal(await row.getByLabel('Mean').inputValue(), '0.2');
    assert.match(await row.locator('dt').first().innerText(), /^The literature's word/);
    const kept = await keptLines(server.url, 'prior_edits');
    assert.ok(kept.length === 2 && kept[0].includes('our climbers grip hard'), kept.join('\n'));
    await page.close();
    await server.kill();
  });
}
