// Test day: fast entry, the question before a far value is kept, refusals beside the row, nothing typed lost.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, widths } from './browser.mjs';

const testsOf = async (world, athlete, kind) =>
  (await get(world.server.url, `/api/athlete_record?athlete=${athlete}`)).body.trajectories.find((each) => each.test === kind).tests;
const onDay = (tests, date) => tests.filter((each) => each.date === date && !each.from_logged_set);

export function testDayTests(world) {
  const open = async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/test_day`, widths.tablet);
    await page.getByLabel('Device').fill('radar 1');
    page.row = (name) => page.getByRole('listitem').filter({ hasText: name });
    return page;
  };
  test('a test far from expected asks “keep it?”, and is saved only then', async () => {
    const page = await open();
    const row = page.row('Odalys Fenn');
    for (let i = 1; i <= 5; i += 1) await row.getByLabel(`speed ${i}, mph`).fill('75');
    await row.getByRole('button', { name: 'Save' }).click();
    await row.getByText('Keep it?').waitFor();
    assert.equal(onDay(await testsOf(world, 'odalys-fenn', 'throwing_velocity'), '2026-06-01').length, 0);
    await row.getByRole('button', { name: 'Keep it' }).click();
    await row.getByText('Saved.').waitFor();
    await row.getByText('already held for this day').waitFor();
    const [held] = onDay(await testsOf(world, 'odalys-fenn', 'throwing_velocity'), '2026-06-01');
    assert.ok((await row.innerText()).includes(`${held.value.toFixed(1)} mph`));
    await page.close();
  });
  test('“Change it” keeps the numbers to be changed, and a changed number is asked about anew', async () => {
    const page = await open();
    const row = page.row('Anders Tollefsen');
    await row.getByLabel('speed 1, mph').fill('99');
    await row.getByRole('button', { name: 'Save' }).click();
    await row.getByText('Keep it?').waitFor();
    await row.getByRole('button', { name: 'Change it' }).click();
    assert.equal(await row.getByLabel('speed 1, mph').inputValue(), '99');
    await row.getByRole('button', { name: 'Save' }).click();
    await row.getByText('Keep it?').waitFor();
    await row.getByLabel('speed 1, mph').fill('98');
    assert.equal(await row.getByRole('button', { name: 'Keep it' }).count(), 0, 'the question was about 99');
    await page.close();
  });
  test('Enter goes through a thrower’s fields, saves from the last and goes on to the next thrower', async () => {
    const page = await open();
    await page.row('Marisol Quay').getByLabel('speed 1, mph').focus();
    for (const speed of ['61.0', '60,5', '61.5', '60.8', '61.2']) {
      await page.keyboard.type(speed);
      await page.keyboard.press('Enter');
    }
    await page.row('Marisol Quay').getByText('Saved.').waitFor();
    const after = await page.evaluate(() => document.activeElement?.getAttribute('data-thrower'));
    const { squad } = (await get(world.server.url, '/api/test_day')).body;
    assert.equal(after, squad[squad.findIndex((each) => each.athlete === 'marisol-quay') + 1].athlete);
    const [held] = onDay(await testsOf(world, 'marisol-quay', 'throwing_velocity'), '2026-06-01');
    assert.ok(Math.abs(held.value - 61.0) < 1e-9, `the mean of the five, the decimal comma read: ${held.value}`);
    await page.close();
  });
  test('a mistyped number is refused beside its row, never left out', async () => {
    const page = await open();
    const row = page.row('Arlo Winterbourne');
    await row.getByLabel('speed 1, mph').fill('83');
    await row.getByLabel('speed 2, mph').fill('8l');
    await row.getByRole('button', { name: 'Save' }).click();
    await row.locator('.refusal').filter({ hasText: '8l' }).waitFor();
    assert.equal(onDay(await testsOf(world, 'arlo-winterbourne', 'throwing_velocity'), '2026-06-01').length, 0);
    await page.close();
  });
  test('looking for another thrower, or another test, loses nothing typed', async () => {
    const page = await open();
    await page.row('Caleb Underhaugh').getByLabel('speed 1, mph').fill('72.4');
    await page.getByLabel('Find a thrower').fill('Odalys');
    assert.equal(await page.row('Caleb Underhaugh').isVisible(), false);
    await page.getByLabel('Find a thrower').fill('');
    assert.equal(await page.row('Caleb Underhaugh').getByLabel('speed 1, mph').inputValue(), '72.4');
    await page.getByLabel(/^Test/).selectOption('split_squat_max');
    await page.row('Caleb Underhaugh').getByLabel('load, lb').waitFor();
    await page.getByLabel(/^Test/).selectOption('throwing_velocity');
    assert.equal(await page.row('Caleb Underhaugh').getByLabel('speed 1, mph').inputValue(), '72.4');
    await page.close();
  });
  test('the lead leg is offered by the throwing hand, and a gym without a radar types the distance', async () => {
    const page = await open();
    await page.getByLabel(/^Test/).selectOption('split_squat_max');
    for (const { name, throwing_hand: hand } of (await get(world.server.url, '/api/test_day')).body.squad)
      assert.equal(await page.row(name).getByLabel('Side').inputValue(), hand === 'right' ? 'left' : 'right', name);
    await page.getByLabel(/^Test/).selectOption('kneeling_overhead_throw_4lb');
    await page.getByLabel('Taken by').selectOption('distance_ft');
    await page.row('Marisol Quay').getByLabel('distance 1, ft').waitFor();
    await page.row('Marisol Quay').getByLabel('height of release 1, in').waitFor();
    await page.close();
  });
}
