// The tables of limits: what stands is the route's; another table is written beside a refusal, kept with who and why, and left again.
import assert from 'node:assert/strict';
import { newHall, serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { keptLines, openPage, picture, violations, widths } from './browser.mjs';

const sectionOf = (page, table) => page.locator(`section[data-organisation="${table.organisation}"][data-sport=${table.sport}]`);
const cell = (section, row, column) => section.locator(`tr[data-ages="${row.age_low}-${row.age_high}"] td[data-column=${column}]`).first();

async function assertTable(section, table) {
  assert.ok((await section.locator('.facts').innerText()).includes(table.whose));
  for (const row of table.rows) {
    assert.ok((await cell(section, row, 'daily_max').innerText()).includes(String(row.daily_max)), `${row.age_low}`);
    if (!row.rest_to.length) continue;
    const rest = await cell(section, row, 'rest').innerText();
    row.rest_to.forEach((to, days) => assert.ok(rest.includes(`${days === 1 ? '1 day' : `${days} days`} to ${to}`), rest));
  }
}

export function pitchRulesTests(world) {
  test('every table of limits is the route’s; another is refused at its cell, kept, and left again with a reason', async () => {
    const server = await serve(newHall(), world.pages); // the others play by the published tables
    const before = (await get(server.url, '/api/pitch_rules')).body.tables;
    const page = await openPage(world.browser, `${server.url}/#/pitch_rules`, widths.tablet);
    for (const table of before) await assertTable(sectionOf(page, table), table);

    const canada = before.find((each) => each.organisation.startsWith('Canada'));
    const section = sectionOf(page, canada);
    await section.getByRole('button', { name: /^Play by another table/ }).click();
    const row = section.locator('fieldset[data-row="1"]');
    await row.getByLabel('1 day of rest to').fill('20'); // below the band before it, 25 [BaseballCanadaPitching]
    await section.getByLabel('Who decides').fill('Kim Osei');
    await section.getByLabel(/^Why/).fill('the spring league asks for more rest');
    await section.getByRole('button', { name: 'Keep this table' }).click();
    const wrong = row.locator('[data-field=rest_1_to]');
    await wrong.getByRole('alert').waitFor();
    assert.match(await wrong.innerText(), /bands must rise/);
    assert.equal(await wrong.locator('input').getAttribute('aria-invalid'), 'true');
    assert.equal(await row.getByLabel('1 day of rest to').inputValue(), '20', 'nothing typed is lost');
    assert.equal((await keptLines(server.url, 'pitch_rules')).filter(Boolean).length, 0, 'refused, and nothing kept');
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'pitch-rules-refused-tablet');

    await row.getByLabel('1 day of rest to').fill('35');
    await section.getByRole('button', { name: 'Keep this table' }).click();
    await section.getByRole('status').filter({ hasText: 'Kept as table 1' }).waitFor();
    const now = (await get(server.url, '/api/pitch_rules')).body.tables.find((each) => each.organisation === canada.organisation);
    assert.ok(now.kept_here && now.rows[1].rest_to[1] === 35 && now.published[1].rest_to[1] === 40);
    await assertTable(section, now);
    assert.match(await cell(section, now.rows[1], 'rest').innerText(), /published: .*1 day to 40/);
    assert.match(await section.locator('.facts').innerText(), /Kim Osei's word/);
    await picture(page, world.pictures, 'pitch-rules-kept-tablet');

    await section.getByRole('button', { name: /^Play by another table/ }).click();
    await section.getByLabel('Who decides').fill('Kim Osei');
    await section.getByLabel(/^Why/).fill('the spring league is over');
    await section.getByRole('button', { name: 'Back to the published table' }).click();
    await section.locator('.facts').filter({ hasText: 'As published' }).waitFor();
    await section.locator('summary').filter({ hasText: 'Changed here 2 times' }).click();
    assert.match(await section.locator('.history').innerText(), /back to the published table\. the spring league is over/);
    await page.close();
    await server.kill();
  });
}
