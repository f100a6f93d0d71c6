// "May she pitch on Thursday?" from the first screen, on the list of everybody, and on the page of one arm.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { keptLines, openPage, picture, violations, widths } from './browser.mjs';

const plain = (text) => text.replace(/[\s\u00a0]+/g, ' ').trim();
const said = { yes: 'Yes', no: 'No', cannot_tell: 'Cannot tell' };
const sheets = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;
const armOf = async (url, athlete, date) => (await get(url, `/api/check_arm?athlete=${athlete}${date ? `&date=${date}` : ''}`)).body;

async function assertStaffRow(row, line) {
  const cell = async (name) => plain(await row.locator(`td.${name}`).innerText());
  assert.ok((await cell('may')).startsWith(said[line.may_pitch]), line.name);
  if (line.may_pitch === 'yes') assert.ok((await cell('may')).includes(`at most ${line.most}`), line.name);
  else if (line.next_day) assert.ok((await cell('next')).includes(String(Number(line.next_day.slice(8)))), line.name);
  // What the other columns say is left out of "why"; what is left is the route's own end of the sentence.
  const why = await cell('why');
  assert.ok(why.length > 10 && plain(line.words).includes(why.slice(1).split('. ')[0]), `${line.name}: ${why}`);
  for (const part of [line.last_outing || 'none written down']) assert.equal(await cell('last'), part, line.name);
  const lately = await cell('lately');
  assert.ok(lately.includes(`${line.throws_7} throws`) && lately.includes('at least') === line.unknown_7 > 0, `${line.name}: ${lately}`);
  for (const stop of line.stops) assert.ok((await cell('planned')).includes(stop), line.name);
}

async function assertLedger(page, ledger) {
  await page.getByText('The same days as a table').click();
  const rows = await page.locator('tr[data-day]').evaluateAll((all) => all.map((row) => [row.dataset.day, ...[...row.cells].slice(1).map((cell) => cell.textContent.trim())]));
  assert.equal(rows.length, ledger.length);
  for (const [i, row] of rows.entries()) {
    const day = ledger[ledger.length - 1 - i];
    assert.equal(row[0], day.date);
    if (day.known === 'unknown') assert.equal(row[1], 'unknown', day.date);
    else assert.deepEqual(row.slice(1, 3), [String(day.throws), String(day.hard)], day.date);
    assert.ok(row.includes(day.average_28.toFixed(1)), day.date);
  }
}

export function mayPitchTests(world) {
  test('“may she pitch on Thursday?” is answered on the first screen of a phone by two taps and four letters', async () => {
    const page = await openPage(world.browser, `${world.server.url}/`, widths.phone);
    let taps = 0;
    const tap = async (target) => { taps += 1; await target.click(); };
    const who = page.getByLabel('Thrower', { exact: true });
    const answer = page.locator('section .answer');
    await tap(who);
    await page.keyboard.type('mari');
    await tap(page.getByRole('radio', { name: /^Thursday/ }));
    const thursday = await armOf(world.server.url, 'marisol-quay', '2026-06-04');
    await answer.getByText('May Marisol Quay pitch on Thursday 4 June 2026?').waitFor();
    assert.ok(plain(await answer.innerText()).includes(plain(thursday.short_answer)), thursday.short_answer);
    assert.equal(taps, 2);
    assert.ok((await page.getByRole('radio', { name: /^Thursday/ }).boundingBox()).y < 900, 'without scrolling');
    await picture(page, world.pictures, 'may-she-pitch-phone');

    // 90 pitches on Saturday 30 May at 22: above 75, so four days of rest, and Thursday is the fifth. [UsaBaseballPitching]
    await who.fill('tollef');
    await answer.getByText('May Anders Tollefsen pitch on Thursday').waitFor();
    await answer.getByText(/^Yes/).first().waitFor();
    await page.getByRole('radio', { name: /^Wednesday/ }).click();
    await answer.getByText(/^No/).first().waitFor();
    await who.fill('sa'); // three are called something with that: they are offered
    await page.getByRole('button', { name: 'Saoirse Mallory' }).click();
    await answer.getByText('May Saoirse Mallory pitch on Wednesday').waitFor();
    await answer.getByRole('link').click();
    await page.getByRole('heading', { name: 'May Saoirse Mallory pitch on Wednesday 3 June 2026?' }).waitFor();
    await page.close();
  });
  test('the list of who may throw is the route’s, for a day and a team, and prints on one page', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/check_staff`);
    const { lines } = (await get(world.server.url, '/api/check_staff')).body;
    assert.equal(await page.locator('tr[data-athlete]').count(), lines.length);
    for (const line of [...lines.filter((each) => each.may_pitch === 'no'), ...lines.slice(0, 2), ...lines.slice(-2)])
      await assertStaffRow(page.locator(`tr[data-athlete=${line.athlete}]`), line);
    for (const format of ['A4', 'Letter']) assert.equal(sheets(await page.pdf({ format })), 1, format);
    await page.getByRole('radio', { name: /^tomorrow/ }).click();
    await page.getByRole('heading', { name: /Who may throw on Tuesday 2 June 2026/ }).waitFor();
    await page.getByLabel('Team').selectOption('Saltgrass Herons');
    const herons = (await get(world.server.url, '/api/check_staff?date=2026-06-02&team=Saltgrass%20Herons')).body.lines;
    await page.waitForFunction((count) => document.querySelectorAll('tr[data-athlete]').length === count, herons.length);
    for (const line of herons.slice(0, 3)) await assertStaffRow(page.locator(`tr[data-athlete=${line.athlete}]`), line);
    await page.close();
  });
  test('the ledger shows every day of the route, unknown ones as unknown, and a day by keys and by touch', async () => {
    const arm = await armOf(world.server.url, 'jonah-pellworm');
    const page = await openPage(world.browser, `${world.server.url}/#/check_arm/jonah-pellworm`, widths.phone);
    assert.ok(plain(await page.locator('p.large').innerText()).startsWith(plain(arm.short_answer).slice(0, 60)));
    await assertLedger(page, arm.ledger);
    assert.ok(arm.ledger.some((day) => day.known === 'unknown') && arm.ledger.some((day) => day.known === 'none'), 'both kinds are there');
    const strip = page.getByRole('slider', { name: 'A day of the ledger' });
    await strip.focus();
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowLeft');
    const before = arm.ledger.at(-2); // nobody wrote Sunday down
    assert.match(await strip.getAttribute('aria-valuetext'), /^Sunday 31 May 2026: Unknown/);
    assert.equal(before.known, 'unknown');
    await page.getByRole('button', { name: 'Day before' }).click();
    const game = arm.ledger.at(-3);
    for (const entry of game.entries) await page.locator('.chosen li').filter({ hasText: entry.slice(0, 30) }).waitFor();
    const box = await strip.boundingBox();
    await page.mouse.click(box.x + box.width - 2, box.y + box.height / 2); // the last column: today
    assert.match(await strip.getAttribute('aria-valuetext'), /^Monday 1 June 2026/);
    // A stop of youth: said so, and no form. [proposal of this project: rest of youth is answered for by nobody]
    const stop = page.locator('[data-code=rest_not_over]');
    await stop.getByText('Nobody can set this one aside.').waitFor();
    assert.equal(await stop.locator('form').count(), 0);
    await page.close();
  });
  test('a coach answers for a stop, writes a start down and a team, and the page says what came of it', async () => {
    const { url } = world.server;
    const page = await openPage(world.browser, `${url}/#/check_arm/emeka-harrowgate`);
    const stop = page.locator('[data-code=rest_not_over]');
    await stop.locator('summary').click();
    await stop.getByLabel('Who answers (name)').fill('Halloran');
    await stop.getByLabel(/^Why/).fill('short');
    await stop.getByRole('button', { name: 'Answer for it' }).click();
    await stop.locator('.refusal').waitFor();
    await stop.getByLabel(/^Why/).fill('the last inning of the final, agreed with him');
    await stop.getByRole('button', { name: 'Answer for it' }).click();
    await page.locator('[data-code=rest_not_over]').getByText(/Answered for by Halloran/).waitFor();
    assert.equal(await stop.locator('form').count(), 0, 'answered once');

    await page.getByText('A day that is spoken for').click();
    await page.getByLabel('Day', { exact: true }).fill('2026-06-10');
    await page.getByRole('button', { name: 'Keep this day' }).click();
    await page.locator('.planned li[data-day="2026-06-10"]').filter({ hasText: 'Wednesday 2026-06-10' }).waitFor();
    assert.ok((await armOf(url, 'emeka-harrowgate')).planned.some((each) => each.date === '2026-06-10' && each.kind === 'start'));

    await page.getByText('A team this thrower plays for').click();
    await page.getByLabel('Team').fill('Harbour Gulls');
    await page.getByLabel('By whose table').selectOption('Canada baseball rule');
    await page.getByRole('button', { name: 'Keep this team' }).click();
    await page.locator('.who').filter({ hasText: 'Harbour Gulls, by the Canada baseball rule' }).waitFor();
    assert.deepEqual(await violations(page), []);
    assert.ok((await keptLines(url, 'stops_answered')).some((line) => line.includes('the last inning of the final')));
    await page.close();
  });
}
