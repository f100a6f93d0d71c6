// The block's page: sets are logged from its lines, a caution is overridden only with a reason, a block is planned.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get, post } from '../http/requests.mjs';
import { keptLines, openPage, widths } from './browser.mjs';

const hexBar = async (url) =>
  (await get(url, '/api/athlete_record?athlete=marisol-quay')).body.trajectories.find((each) => each.test === 'hex_bar_high_max');
const setsOf = async (url) => (await keptLines(url, 'sets')).length;

export function planBlockTests(world) {
  const open = async (athlete, exercise) => {
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/${athlete}`, widths.tablet);
    if (exercise) await page.getByRole('button', { name: `Log a set, ${exercise}` }).first().click();
    return page;
  };
  test('a logged set says how the estimate moved, and the record holds the same', async () => {
    const before = await hexBar(world.server.url);
    const page = await open('marisol-quay', 'Hex-bar deadlift, high handles');
    await page.getByLabel('Load, lb').fill('170');
    await page.getByLabel('Repetitions').fill('5');
    await page.getByLabel('Left in reserve').fill('1');
    await page.getByRole('button', { name: 'Keep this set' }).click();
    await page.getByText(/^Kept\. Hex-bar deadlift.*, now /).waitFor();
    const after = await hexBar(world.server.url);
    assert.equal(after.tests.length, before.tests.length + 1);
    assert.ok(after.tests.some((each) => each.date === '2026-06-01' && each.from_logged_set));
    assert.notEqual(after.now.value, before.now.value);
    const said = await page.locator('.said p').innerText();
    assert.ok(said.includes(`${before.now.value.toFixed(before.now.decimals)} lb`), said);
    assert.ok(said.includes(`now ${after.now.value.toFixed(after.now.decimals)} lb`), said);
    assert.equal(await page.getByLabel('Set', { exact: true }).inputValue(), '2', 'the next set is offered');
    await page.close();
  });
  test('sets done on their day are counted on their line', async () => {
    const planned = await post(world.server.url, '/api/plan_block', { athlete: 'anders-tollefsen', start: '2026-06-01', training_days: [] });
    assert.equal(planned.status, 200, JSON.stringify(planned.body));
    const [session] = planned.body.sessions;
    assert.equal(session.date, '2026-06-01');
    const line = session.lines.find((each) => each.part === 'main_lift' && each.load !== null);
    const page = await open('anders-tollefsen', line.name);
    for (let done = 1; done <= 2; done += 1) {
      await page.getByLabel('Left in reserve').fill('2');
      await page.getByRole('button', { name: 'Keep this set' }).click();
      await page.getByText(`${done} of ${line.sets} that day`).first().waitFor();
    }
    await page.close();
  });
  test('a set of a block planned from an older one’s page does not bring the older one back', async () => {
    const older = (await get(world.server.url, '/api/block?block=anders-tollefsen')).body.block;
    const page = await open(older);
    await page.getByLabel('First day').fill('2026-06-08');
    await page.getByRole('button', { name: 'Write the block' }).click();
    const heading = page.getByRole('heading', { name: 'Anders Tollefsen: block from 2026-06-08' });
    await heading.waitFor();
    const fresh = (await get(world.server.url, '/api/block?block=anders-tollefsen')).body;
    assert.equal(fresh.start, '2026-06-08');
    const line = fresh.sessions[0].lines.find((each) => each.part === 'main_lift' && each.load !== null);
    await page.getByRole('button', { name: `Log a set, ${line.name}` }).first().click();
    await page.getByLabel('Left in reserve').fill('2');
    const again = page.waitForResponse('**/api/block?**');
    await page.getByRole('button', { name: 'Keep this set' }).click();
    assert.ok((await again).url().includes(fresh.block));
    await page.waitForTimeout(300);
    assert.ok(await heading.isVisible());
    await page.close();
  });
  test('a set that waits on the device has its number already when its line is opened again', async () => {
    const block = (await get(world.server.url, '/api/block?block=anders-tollefsen')).body;
    const line = block.sessions[0].lines.find((each) => each.part === 'main_lift' && each.load !== null);
    const page = await open('anders-tollefsen', line.name);
    const number = page.getByLabel('Set', { exact: true });
    const first = Number(await number.inputValue());
    await page.route('**/api/log_set', (route) => route.abort());
    await page.getByLabel('Left in reserve').fill('2');
    await page.getByRole('button', { name: 'Keep this set' }).click();
    await page.getByText('One entry waits on this device').waitFor();
    const button = page.getByRole('button', { name: `Log a set, ${line.name}` }).first();
    await button.click();
    await button.click();
    await page.waitForFunction((next) => document.querySelector('form.log input[type=number]')?.value === next, String(first + 1));
    await page.close();
  });
  test('a line whose load the first week finds has a field for the load found', async () => {
    const block = await fetch(`${world.server.url}/api/block?block=tuva-skagen&week=1`).then((answer) => answer.json());
    const found = block.sessions.flatMap((each) => each.lines).find((each) => each.load_words.startsWith('first week: find the load'));
    assert.ok(found, 'a line of week 1 without a load');
    const page = await open('tuva-skagen', found.name);
    await page.getByLabel(/, lb$/).first().fill('40');
    await page.getByLabel('Left in reserve').fill('2');
    await page.getByRole('button', { name: 'Keep this set' }).click();
    await page.locator('.said').getByText(/^Kept/).waitFor();
    const line = (await keptLines(world.server.url, 'sets')).filter((each) => each.includes('tuva-skagen') && each.includes(found.exercise) && each.includes('2026-06-01'));
    assert.equal(line.length, 1);
    assert.match(line[0], /,(40|40\.0+|18\.1\d+),/);
    await page.close();
  });
  test('a ball is logged with its speed, and a day ahead or a mistyped load is refused and keeps nothing', async () => {
    const before = await setsOf(world.server.url);
    const page = await open('marisol-quay', 'Overhead throw with a step');
    await page.getByLabel('Ball speed, mph').waitFor();
    await page.getByLabel('Done on').fill('2026-06-08');
    await page.getByRole('button', { name: 'Keep this set' }).click();
    await page.getByText(/after today/).waitFor();
    await page.getByLabel('Done on').fill('2026-06-01');
    await page.getByLabel('Ball, lb').fill('4lb');
    await page.getByRole('button', { name: 'Keep this set' }).click();
    await page.locator('.refusal').filter({ hasText: '4lb' }).waitFor();
    assert.equal(await setsOf(world.server.url), before);
    await page.close();
  });
  test('an override is kept only with a reason', async () => {
    const page = await open('luca-thistlewood');
    await page.getByText('Take an exercise in spite of a caution').click();
    await page.waitForLoadState('networkidle');
    await page.getByLabel('Caution').selectOption('every_thrower');
    await page.getByLabel('Exercise').selectOption('bench_press_straight_bar');
    await page.getByLabel('Who decides').fill('Coach Halloran');
    await page.getByLabel(/Why/).fill('short');
    const before = (await keptLines(world.server.url, 'overrides')).length;
    await page.getByRole('button', { name: 'Keep this decision' }).click();
    await page.locator('.refusal').filter({ hasText: /10/ }).waitFor();
    assert.equal((await keptLines(world.server.url, 'overrides')).length, before);
    await page.getByLabel(/Why/).fill('Pressed for years without trouble; stops two fingers above the chest.');
    await page.getByRole('button', { name: 'Keep this decision' }).click();
    await page.locator('p[role=status]').filter({ hasText: /Bench press/ }).waitFor();
    const kept = (await keptLines(world.server.url, 'overrides')).at(-1);
    assert.ok(kept.includes('Coach Halloran') && kept.includes('two fingers above'), kept);
    await page.close();
  });
  test('a block is planned from the form, for the thrower the page names; numbers out of range are refused', async () => {
    const page = await open('luca-thistlewood');
    await page.getByRole('heading', { name: 'Luca Thistlewood: plan a block' }).waitFor();
    await page.getByLabel('Weeks (4 to 16)').fill('17');
    await page.getByRole('button', { name: 'Write the block' }).click();
    await page.locator('.refusal').filter({ hasText: /17/ }).waitFor();
    await page.getByLabel('Weeks (4 to 16)').fill('6');
    await page.getByLabel('Sessions a week (1 to 5)').fill('2');
    await page.getByRole('button', { name: 'Write the block' }).click();
    await page.getByRole('heading', { name: /Luca Thistlewood: block from/ }).waitFor();
    const block = (await get(world.server.url, '/api/block?block=luca-thistlewood')).body;
    assert.equal(block.weeks, 6);
    assert.equal(block.sessions_per_week, 2);
    await page.getByText('6 weeks, 2 sessions a week').waitFor();
    for (const note of [...block.notes, ...block.aims]) await page.getByText(note, { exact: true }).waitFor();
    await page.close();
  });
  test('a name nobody bears is refused, not offered a plan', async () => {
    const page = await open('nobody-here');
    await page.locator('.refusal').filter({ hasText: 'nobody-here' }).waitFor();
    assert.equal(await page.getByRole('button', { name: 'Write the block' }).count(), 0);
    await page.close();
  });
}
