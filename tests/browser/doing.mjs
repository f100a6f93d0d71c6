// What a coach does: brings a file, enters a test day, logs sets, plans a block, also with the keyboard alone and offline.
import assert from 'node:assert/strict';
import { serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage } from './browser.mjs';

const squatState = async (url) =>
  (await get(url, '/api/athlete_record?athlete=marisol-quay')).body.trajectories.find((each) => each.test === 'hex_bar_high_max');

export function doingTests(world) {
  test('a file with a bad line is refused with line and column, a good one is taken', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/import_records`);
    const good = 'athlete,date,test,speed_mph,trial,device,place_measured\nMarisol Quay,2026-05-31,throwing_velocity,60.1,1,radar 1,out_of_hand\n';
    await page.getByLabel('Or paste its lines here').fill(good.replace('60.1', '140'));
    await page.getByRole('button', { name: 'Show what it would do' }).click();
    await page.getByText(/Line 2: .*140/).waitFor();
    assert.ok(await page.getByRole('button', { name: 'Take it' }).isDisabled());
    await page.getByLabel('Or paste its lines here').fill(good);
    await page.getByRole('button', { name: 'Show what it would do' }).click();
    await page.getByText('It would add 1 new').waitFor();
    await page.getByRole('button', { name: 'Take it' }).click();
    await page.getByText('Taken: 1 new').waitFor();
    await page.close();
  });
  test('a test far from expected asks “keep it?” before it is saved', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/test_day`);
    await page.getByLabel('Device').fill('radar 1');
    await page.getByLabel('Find a thrower').fill('Odalys');
    for (let i = 1; i <= 5; i += 1) await page.getByLabel(`speed ${i}, mph`).fill('75');
    await page.getByRole('button', { name: 'Save, Odalys Fenn' }).click();
    await page.getByText('Keep it?').waitFor();
    await page.getByRole('button', { name: 'Keep it' }).click();
    await page.getByText('Saved.').waitFor();
    await page.close();
  });
  test('a logged set says how the estimate moved, and the record shows it', async () => {
    const before = (await squatState(world.server.url)).tests.length;
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`);
    // The block lies ahead of the test's "today": the form's own date is refused, in a sentence.
    await page.getByRole('button', { name: /Log a set, Hex-bar deadlift/ }).first().click();
    await page.getByRole('button', { name: 'Keep this set' }).click();
    await page.getByText(/after today/).waitFor();
    const block = (await get(world.server.url, '/api/block?block=marisol-quay')).body.block;
    const answer = await fetch(`${world.server.url}/api/log_set`, {
      method: 'POST',
      body: JSON.stringify({ key: 'browser-set-0001', athlete: 'marisol-quay', date: '2026-06-01', exercise: 'hex_bar_deadlift_high',
                             set_number: 1, load_lb: 160, reps: 5, reps_in_reserve: 1, block }),
    }).then((r) => r.json());
    assert.match(answer.words, /now/);
    assert.equal((await squatState(world.server.url)).tests.length, before + 1);
    await page.close();
  });
  test('an override is kept only with a reason', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/luca-thistlewood`);
    await page.getByText('Take it in spite of the caution').click();
    await page.waitForLoadState('networkidle');
    await page.getByLabel('Exercise').selectOption({ index: 0 });
    await page.getByLabel('Who decides').fill('Coach Halloran');
    await page.getByLabel(/Why/).fill('short');
    await page.getByRole('button', { name: 'Keep this decision' }).click();
    await page.locator('.refusal').filter({ hasText: /reason|say why|override/i }).first().waitFor();
    await page.close();
  });
  test('with the keyboard alone: from the roster to a thrower to a block', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/roster`);
    await page.getByRole('link', { name: 'Marisol Quay' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Marisol Quay' }).waitFor();
    await page.getByRole('link', { name: 'Plan a block' }).first().focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /Marisol Quay: block/ }).waitFor();
    await page.getByLabel('Weeks (4 to 16)').focus();
    await page.keyboard.type('5');
    await page.keyboard.press('Enter');
    await page.getByText(/weeks/).first().waitFor();
    await page.close();
  });
  test('the server dies while sets are logged: they wait on the device and arrive once', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/test_day`);
    await page.getByLabel('Device').fill('radar 1');
    await page.getByLabel('Find a thrower').fill('Greta');
    await world.server.kill('SIGKILL');
    for (let i = 1; i <= 5; i += 1) await page.getByLabel(`speed ${i}, mph`).fill('61.5');
    await page.getByRole('button', { name: 'Save, Greta Holloway' }).click();
    await page.getByText('Kept on this device').waitFor();
    world.server = await serve(world.store, world.pages, world.server.port);
    await page.reload();
    await page.waitForTimeout(1500);
    const record = (await get(world.server.url, '/api/athlete_record?athlete=greta-holloway')).body;
    const velocity = record.trajectories.find((each) => each.test === 'throwing_velocity');
    assert.equal(velocity.tests.filter((each) => each.date === '2026-06-01').length, 1);
    assert.equal(await page.getByText('waits on this device').count(), 0);
    await page.close();
  });
}
