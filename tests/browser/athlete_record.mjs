// The thrower's page: an answer never outlives its question.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { openPage } from './browser.mjs';

const open = async (world, athlete) => openPage(world.browser, `${world.server.url}/#/athlete_record/${athlete}`);

export function athleteRecordTests(world) {
  test('a judged change leaves the page when another day is chosen', async () => {
    const page = await open(world, 'odalys-fenn');
    await page.getByText('Did it really change?').click();
    await page.getByRole('button', { name: 'Judge the change' }).click();
    await page.getByText('Likely true change').waitFor();
    await page.getByRole('combobox', { name: 'From' }).selectOption({ index: 2 });
    assert.equal(await page.getByText('Likely true change').count(), 0);
    await page.close();
  });
  test('the charts of a thrower share their days', async () => {
    const page = await open(world, 'marisol-quay');
    const months = await page.locator('article:not(.large) svg.trajectory').evaluateAll((all) =>
      all.map((svg) => [...svg.querySelectorAll('line.stem')].map((tick) => Math.round(Number(tick.getAttribute('x1'))))));
    assert.ok(months.length > 10);
    for (const each of months) assert.deepEqual(each, months[0]);
    await page.close();
  });
}
