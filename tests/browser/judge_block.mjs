// The pages that judge a block and choose the next test show what the routes answer, in words and in the drawing's own text.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => {
  const text = x.toFixed(decimals).replace('-', '\u2212');
  return /[1-9]/.test(text) ? text : text.replace('\u2212', '');
};
const signed = (x, decimals) => (x > 0 && /[1-9]/.test(fixed(x, decimals)) ? `+${fixed(x, decimals)}` : fixed(x, decimals));
const textOf = async (page) => (await page.locator('main').innerText()).replace(/\s+/g, ' ');
const weeks = { from: '2026-01-12', to: '2026-04-05' };

async function judged(world, width) {
  const page = await openPage(world.browser, `${world.server.url}/#/judge_block/tomas-verlaine`, width);
  await page.getByLabel('First day').fill(weeks.from);
  await page.getByLabel('Last day').fill(weeks.to);
  await page.getByRole('button', { name: 'Judge these weeks' }).click();
  await page.getByRole('heading', { name: 'Throwing velocity' }).waitFor({ timeout: 60000 });
  return page;
}

export function judgeBlockTests(world) {
  test('the page of a block shows forecast, test, excess and comparison of every quality as the route answers them', async () => {
    const { body } = await get(world.server.url, `/api/judge_block?athlete=tomas-verlaine&from_date=${weeks.from}&to_date=${weeks.to}`);
    const page = await judged(world);
    const text = await textOf(page);
    assert.ok(body.qualities.length > 3, `${body.qualities.length} qualities`);
    for (const { name, unit, decimals, forecast, excess, observed, others } of body.qualities) {
      assert.ok(text.includes(name), name);
      assert.ok(text.includes(`${fixed(forecast.value, decimals)} ${unit}`), `${name}: forecast ${forecast.value}`);
      assert.ok(text.includes(`${fixed(observed, decimals)} ${unit}`), `${name}: test ${observed}`);
      for (const shown of [excess, ...(others ? [others.beside] : [])])
        assert.ok(text.includes(`${signed(shown.value, decimals)} ${unit} (80 %: ${signed(shown.low, decimals)} to ${signed(shown.high, decimals)})`), `${name}: ${shown.value}`);
      const drawing = page.getByRole('img', { name: `${name}: forecast without the block ${fixed(forecast.value, decimals)} ${unit}` });
      assert.equal(await drawing.count(), 1, name);
    }
    const said = { more: 'More than foretold', less: 'Less than foretold', cannot_tell: 'Cannot tell' };
    const verdicts = await page.locator('section > p.says').allInnerTexts();
    assert.deepEqual(verdicts, body.qualities.map((each) => said[each.verdict]));
    for (const line of body.not_taken_out) assert.ok(text.includes(line), line);
    await page.close();
  });
  for (const width of [widths.desktop, widths.phone])
    test(`a judged block at ${width} px fits, with no accessibility violation`, async () => {
      const page = await judged(world, width);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `judged-block-${width}`);
      await page.close();
    });
  test('a thrower without a kept block is told so, and asked for dates', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/judge_block/tomas-verlaine`);
    await page.getByText('has no kept block that has begun').waitFor({ timeout: 60000 });
    await page.close();
  });
  test('the page of the next test shows every test with its day and doubt as the route answers them', async () => {
    const { body } = await get(world.server.url, '/api/next_test?athlete=marisol-quay');
    const page = await openPage(world.browser, `${world.server.url}/#/next_test/marisol-quay`);
    await page.getByRole('heading', { name: 'Every test, most worth first' }).waitFor({ timeout: 60000 });
    const text = await textOf(page);
    assert.ok(body.tests.length > 5);
    for (const each of body.tests) {
      assert.ok(text.includes(each.test_name), each.test_name);
      assert.ok(text.includes(`${fixed(each.doubt_without, 2)} to ${fixed(each.doubt_with, 2)}`), each.test_name);
      if (each.date) assert.ok(text.includes(each.date), each.date);
    }
    for (const { date, why } of body.tests[0].passed_over) assert.ok(text.includes(`${date}: ${why}`), why);
    await page.close();
  });
  test('the verdict between two days says what it was judged from', async () => {
    const { body } = await get(world.server.url, '/api/judge_change?athlete=tomas-verlaine&test=throwing_velocity');
    const page = await openPage(world.browser, `${world.server.url}/#/athlete_record/tomas-verlaine`);
    await page.getByText('Did it really change?').click();
    await page.getByRole('button', { name: 'Judge the change' }).click();
    await page.getByText(body.from_words).waitFor({ timeout: 60000 });
    const text = await textOf(page);
    assert.equal(body.from, 'joint model');
    assert.ok(text.includes(`${fixed(body.likely.value, body.likely.decimals)} ${body.likely.unit}`));
    await page.close();
  });
}
