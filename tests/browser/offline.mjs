// The server dies by kill -9 while a coach works: what was typed waits on the device and arrives once.
import assert from 'node:assert/strict';
import { serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { keptLines, openPage } from './browser.mjs';

export function offlineTests(world) {
  const back = async () => (world.server = await serve(world.store, world.pages, world.server.port));
  const setsOf = async (name) => (await keptLines(world.server.url, 'sets')).filter((line) => line.includes(name) && line.includes('2026-06-01'));
  const velocityTests = async (athlete) =>
    (await get(world.server.url, `/api/athlete_record?athlete=${athlete}`)).body.trajectories
      .find((each) => each.test === 'throwing_velocity').tests.filter((each) => each.date === '2026-06-01');
  const logForm = async (exercise) => {
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`);
    await page.getByRole('button', { name: `Log a set, ${exercise}` }).first().click();
    return page;
  };
  // Lines of the block that have a load, whatever the planner chose.
  const loadedLines = async () => {
    const { sessions } = (await get(world.server.url, '/api/block?block=marisol-quay')).body;
    const loaded = sessions.flatMap((each) => each.lines).filter((each) => each.part === 'main_lift' && each.load !== null);
    return [...new Map(loaded.map((each) => [each.exercise, each])).values()];
  };
  const nothingWaits = (page) => page.getByText(/on this device to be sent/).waitFor({ state: 'detached', timeout: 15000 });

  test('two sets logged while the server is dead wait, and both arrive once', async () => {
    const [line] = await loadedLines();
    const before = await setsOf(line.exercise);
    const page = await logForm(line.name);
    await world.server.kill('SIGKILL');
    for (const number of ['1', '2']) {
      assert.equal(await page.getByLabel('Set', { exact: true }).inputValue(), number);
      await page.getByLabel('Left in reserve').fill('2');
      await page.getByRole('button', { name: 'Keep this set' }).click();
      await page.getByText('Kept on this device').waitFor();
      await page.waitForFunction((next) => document.querySelector('form.log input[type=number]').value === next, String(Number(number) + 1));
    }
    await page.getByText('2 entries wait on this device').waitFor({ timeout: 15000 });
    await back();
    await nothingWaits(page);
    const after = await setsOf(line.exercise);
    assert.equal(after.length, before.length + 2);
    assert.equal(new Set(after.map((line) => line.match(/set-[0-9a-f]{24}/)[0])).size, after.length);
    await page.close();
  });
  test('a set the server kept, whose answer was lost on the way, is sent again and stays one set', async () => {
    const [, line] = await loadedLines();
    const before = (await setsOf(line.exercise)).length;
    const page = await logForm(line.name);
    let lost;
    const answerLost = new Promise((done) => { lost = done; });
    await page.route('**/api/log_set', async (route) => {
      await route.fetch();
      await route.abort();
      lost();
    });
    await page.getByLabel('Left in reserve').fill('3');
    await page.getByRole('button', { name: 'Keep this set' }).click();
    await page.getByText('Kept on this device').waitFor();
    await answerLost; // the route must not be taken away while it holds the answer
    await page.unroute('**/api/log_set');
    await page.getByRole('button', { name: 'Send now' }).click({ timeout: 2000 }).catch(() => undefined); // or sent by itself
    await nothingWaits(page);
    assert.equal((await setsOf(line.exercise)).length, before + 1);
    await page.close();
  });
  test('a test day entered while the server is dead arrives once', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/test_day`);
    const row = page.getByRole('listitem').filter({ hasText: 'Greta Holloway' });
    await page.getByLabel('Device').fill('radar 1');
    await world.server.kill('SIGKILL');
    for (let i = 1; i <= 5; i += 1) await row.getByLabel(`speed ${i}, mph`).fill('61.5');
    await row.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Kept on this device').waitFor();
    await back();
    await page.reload();
    await page.waitForLoadState('networkidle');
    await nothingWaits(page);
    assert.equal((await velocityTests('greta-holloway')).length, 1);
    await page.close();
  });
  test('a waiting test the server asks about is not lost: it waits for the coach’s answer', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/test_day`);
    const row = page.getByRole('listitem').filter({ hasText: 'Bastian Greyling' });
    await page.getByLabel('Device').fill('radar 1');
    await world.server.kill('SIGKILL');
    await row.getByLabel('speed 1, mph').fill('99');
    await row.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Kept on this device').waitFor();
    await back();
    await page.reload();
    await page.getByRole('button', { name: /^Keep it: Bastian Greyling/ }).waitFor({ timeout: 15000 });
    assert.equal((await velocityTests('bastian-greyling')).length, 0);
    await page.getByRole('button', { name: /^Keep it: Bastian Greyling/ }).click();
    await nothingWaits(page);
    assert.equal((await velocityTests('bastian-greyling')).length, 1);
    await page.close();
  });
}
