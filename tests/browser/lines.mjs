// The two lines: every number on the page is the route's, what is left out is named, and a refusal says what to do.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
const withUnit = (shown) => `${fixed(shown.value, shown.decimals)} ${shown.unit}`;
const between = (shown) => `${fixed(shown.low, shown.decimals)} to ${fixed(shown.high, shown.decimals)}`;
const plain = (text) => text.replace(/\s+/g, ' ').replaceAll('\u2212', '-');
const textOf = async (page) => plain(await page.locator('main').innerText());

export function linesTests(world) {
  const askLine = (athlete, more = '') => get(world.server.url, `/api/ball_mass_line?athlete=${athlete}${more}`);
  const openLine = (athlete, width) => openPage(world.browser, `${world.server.url}/#/ball_mass_line/${athlete}`, width);

  test('the ball line shows every ball, the level and the slope of the answer, each with its interval', async () => {
    for (const athlete of ['greta-holloway', 'amara-tidewell', 'tomas-verlaine']) {
      const { body: answer } = await askLine(athlete);
      const page = await openLine(athlete);
      const text = await textOf(page);
      for (const ball of answer.balls)
        for (const shown of [ball.speed, ball.on_line, ball.energy, ball.momentum])
          assert.ok(text.includes(plain(`${withUnit(shown)} (80 %: ${between(shown)})`)), `${athlete}, ${ball.mass}: ${withUnit(shown)}`);
      assert.ok(text.includes(plain(`${withUnit(answer.level)} (80 %: ${between(answer.level)})`)), athlete);
      assert.ok(text.includes(plain(`${fixed(answer.slope.value, 2)} (80 %: ${between(answer.slope)})`)), athlete);
      for (const line of [...answer.throw_next, ...answer.cautions, answer.words[2]]) assert.ok(text.includes(plain(line)), line);
      const share = (ball) => `${Math.round(100 * ball.of_lightest)} %`;
      assert.deepEqual(await page.locator('table').first().locator('tbody tr td:nth-child(4)').allInnerTexts(), answer.balls.map(share));
      await page.close();
    }
  });
  test('balls lie on a log axis, the working range is named, and each ball bears its bar and its single throws', async () => {
    const { body: answer } = await askLine('greta-holloway');
    const page = await openLine('greta-holloway');
    const x = await page.locator('svg[role=img] circle:not(.single)').evaluateAll((all) => all.map((each) => Number(each.getAttribute('cx'))));
    const ratio = (x[1] - x[0]) / (x[2] - x[0]);
    const wanted = Math.log(answer.balls[1].mass / answer.balls[0].mass) / Math.log(answer.balls[2].mass / answer.balls[0].mass);
    assert.ok(Math.abs(ratio - wanted) < 1e-6, `${ratio} and ${wanted}`);
    assert.equal(await page.locator('svg[role=img] circle.single').count(), answer.balls.reduce((sum, ball) => sum + ball.throws, 0));
    await page.locator('svg[role=img]').getByText('working range').waitFor();
    await page.close();
  });
  test('a thrower without three balls reads what to throw next', async () => {
    const { status, body } = await askLine('marisol-quay');
    assert.equal(status, 422);
    const page = await openLine('marisol-quay', widths.phone);
    assert.ok(plain(await page.locator('.refusal').innerText()).includes(plain(body.refusal.sentence)));
    assert.equal(await page.locator('svg[role=img]').count(), 0);
    await page.close();
  });

  const typed = [['95', '0.95'], ['135', '0,52'], ['185', '0.58'], ['205', '0.48']];
  const sent = typed.map(([load, speed]) => ({ load_lb: Number(load), speed_ms: Number(speed.replace(',', '.')) }));
  const askLoads = (test, loads, more = '') =>
    get(world.server.url, `/api/load_velocity?athlete=greta-holloway&test=${test}&loads=${encodeURIComponent(JSON.stringify(loads))}${more}`);
  const openLoads = (width) => openPage(world.browser, `${world.server.url}/#/load_velocity/greta-holloway`, width);
  const fill = async (page, loads, name = 'Load') => {
    for (const [i, [load, speed]] of loads.entries()) {
      if (i > 2) await page.getByRole('button', { name: 'One more load' }).click();
      await page.getByLabel(`${name} ${i + 1}, lb`).fill(load);
      await page.getByLabel(`Speed ${i + 1}, m/s`).fill(speed);
    }
    await page.getByRole('button', { name: 'Show the line' }).click();
  };
  test('loads typed by hand give the route’s maximum, and the half-hearted repetition is named and hollow', async () => {
    const { body: answer } = await askLoads('back_squat_max', sent);
    const page = await openLoads(widths.phone);
    await fill(page, typed);
    await page.getByText('Maximum by the line').waitFor();
    const text = await textOf(page);
    assert.ok(text.includes(plain(`${withUnit(answer.one_rep_max)} (80 %: ${between(answer.one_rep_max)})`)), text);
    for (const line of [...answer.words, ...answer.cautions]) assert.ok(text.includes(plain(line)), line);
    const left = answer.loads.filter((each) => !each.used);
    assert.equal(left.length, 1);
    assert.equal(await page.locator('svg[role=img] circle.hollow').count(), 1);
    await page.locator('svg[role=img]').getByText(`${left[0].load} lb: left out`).waitFor();
    const rows = await page.locator('tbody tr').evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent)));
    assert.deepEqual(rows, answer.loads.map((each) => [String(each.load), fixed(each.speed, 2), fixed(each.on_line, 2), each.used ? '' : 'out of line, left out']));
    assert.deepEqual(await violations(page), []);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    await page.getByLabel('Speed 2, m/s').fill('0.78');
    assert.equal(await page.locator('svg[role=img]').count(), 0, 'a line never stands beside loads it does not belong to');
    await page.close();
  });
  test('a pull-up says the maximum of body and load together, and the added part', async () => {
    const loads = [['0', '0.80'], ['25', '0.60'], ['50', '0.40']];
    const { body: answer } = await askLoads('pull_up_max', loads.map(([load, speed]) => ({ load_lb: Number(load), speed_ms: Number(speed) })), '&body_mass_lb=150');
    const page = await openLoads();
    await page.getByLabel('Lift').selectOption('pull_up_max');
    await page.getByLabel('Body mass, lb').fill('150');
    await fill(page, loads, 'Added load');
    await page.getByText('Of that, added to the body').waitFor();
    const text = await textOf(page);
    for (const shown of [answer.one_rep_max, answer.added_load]) assert.ok(text.includes(plain(`${withUnit(shown)} (80 %: ${between(shown)})`)), text);
    assert.ok(text.includes('from memory'));
    await page.close();
  });
  test('a mistyped speed, loads too light, and a lift without a minimal velocity are refused in words', async () => {
    const page = await openLoads();
    await fill(page, [['95', '0.9s'], ['185', '0.58']]);
    await page.locator('.refusal').filter({ hasText: '0.9s' }).waitFor();
    await page.getByLabel('Speed 1, m/s').fill('0.95');
    await page.getByLabel('Load 2, lb').fill('115');
    await page.getByLabel('Speed 2, m/s').fill('0.86');
    await page.getByRole('button', { name: 'Show the line' }).click();
    await page.locator('.refusal').filter({ hasText: 'please add a heavier load' }).waitFor();
    await page.getByLabel('Lift').selectOption('press_max');
    const { body } = await get(world.server.url, '/api/load_velocity?athlete=greta-holloway&test=press_max');
    await page.locator('.refusal').filter({ hasText: body.refusal.sentence }).waitFor();
    assert.equal(await page.locator('svg[role=img]').count(), 0);
    await page.close();
  });
}
