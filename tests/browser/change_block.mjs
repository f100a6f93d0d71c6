// The coach's own word on a line: why it stands there, what it is worth, what moves when it is held, left out or swapped.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get, post } from '../http/requests.mjs';
import { openPage, picture, tabTo, violations, widths } from './browser.mjs';

const who = 'greta-holloway';
const fixed = (x, decimals) => x.toFixed(decimals).replace(/^-(0(\.0*)?)$/, '$1').replace('-', '\u2212');
const plain = (text) => text.replaceAll('\u2212', '-').replace(/\s+/g, ' ');
const lines = (block) => block.sessions.map((session) => session.lines.map((line) => [line.exercise, line.sets, line.reps, line.load]));

export function changeBlockTests(world) {
  const kept = async () => (await get(world.server.url, `/api/block?block=${who}`)).body;
  const open = (width = widths.desktop) => openPage(world.browser, `${world.server.url}/#/plan_block/${who}`, width);
  const press = (page, name) => page.getByRole('button', { name }).first().click();
  const says = async (page, text, where = 'main') => {
    const shown = plain(await page.locator(where).innerText());
    assert.ok(shown.includes(plain(text)), `“${text}” is not in: ${shown.slice(0, 400)}`);
  };

  test('what the block gives: every share, weight and point of the panel is the route’s', async () => {
    const planned = await post(world.server.url, '/api/plan_block', { athlete: who, start: '2026-06-08', training_days: [] });
    assert.equal(planned.status, 200, JSON.stringify(planned.body));
    const { reach } = await kept();
    const page = await open();
    assert.ok(reach, 'this thrower can be planned for');
    await page.getByText('What this block gives').click();
    await says(page, `${fixed(reach.points, 1)} points of 100`, '.reach');
    await says(page, reach.at_most_more === null ? 'was not worked out' : `at most ${fixed(reach.at_most_more, 1)} more within these limits`, '.reach');
    for (const part of [reach.worth, reach.fatigue, reach.lines, reach.ready]) await says(page, `${fixed(part, 2)} for`, '.reach');
    for (const share of reach.shares) {
      const row = plain(await page.locator('.reach tr').filter({ has: page.getByRole('rowheader', { name: share.name, exact: true }) }).innerText());
      for (const number of [`${fixed(share.share, 0)} % (${fixed(share.share_low, 0)} to ${fixed(share.share_high, 0)})`, fixed(share.weekly_sets, 1), `${fixed(share.weight, 0)} %`, share.words])
        assert.ok(row.includes(plain(number)), `${share.name}: ${number} is not in ${row}`);
    }
    for (const broken of reach.broken) await says(page, broken, '.reach');
    await says(page, reach.words, '.reach');
    await page.close();
  });
  test('a session says how many of its minutes are taken, and what one more set would meet is said where it binds', async () => {
    const block = await kept();
    const page = await open();
    for (const session of block.sessions.filter((each) => each.week === 1)) {
      await says(page, `${fixed(session.minutes, 0)} of ${fixed(block.minutes, 0)} minutes`);
      for (const line of session.lines) if (!line.held_back.startsWith(line.name)) await says(page, line.held_back);
    }
    await page.close();
  });
  test('the why of a line has its reason, its load, what it is worth and what holds back one more set', async () => {
    const [session] = (await kept()).sessions;
    const page = await open();
    for (const line of session.lines) {
      await press(page, `Why, ${line.name}`);
      const panel = page.locator('.panel dl');
      for (const text of [line.reason, line.load_words, line.intensity_words, line.held_back, line.setup, `${fixed(line.minutes, 0)} minutes of the session`])
        if (text) await says(page, text, '.panel dl');
      if (line.dropping !== null) await says(page, `${fixed(Math.abs(line.dropping), 1)} points ${line.dropping < 0 ? 'more' : 'fewer'}`, '.panel dl');
      await page.keyboard.press('Escape');
      await panel.waitFor({ state: 'detached' });
      assert.equal(await page.evaluate(() => document.activeElement.getAttribute('aria-label')), `Why, ${line.name}`);
    }
    await page.close();
  });
  test('a line left out: what moved is listed with its why and marked on its line, and taking it back brings the block back', async () => {
    const before = await kept();
    const page = await open();
    const [session] = before.sessions;
    const line = session.lines.filter((each) => each.part !== 'main_lift').at(-1);
    await press(page, `Change, ${line.name}`);
    const answered = page.waitForResponse(/adjust_block/);
    await press(page, 'Leave it out of this session');
    const answer = await (await answered).json();
    await page.getByRole('heading', { name: 'What moved, and why' }).waitFor();
    await says(page, answer.words, 'section.moved');
    assert.ok(answer.moved.length > 0);
    for (const move of answer.moved) {
      const row = page.locator('section.moved tbody tr').filter({ hasText: move.name }).filter({ hasText: move.what });
      assert.ok(plain(await row.first().innerText()).includes(plain(move.why)), move.why);
    }
    assert.equal(await page.evaluate(() => document.activeElement.textContent), 'What moved, and why', 'the focus is on what is said');
    const after = await kept();
    assert.deepEqual(lines(after), lines(answer.block));
    for (const each of after.sessions.filter((one) => one.session === session.session))
      assert.ok(!each.lines.some((one) => one.exercise === line.exercise), `week ${each.week}`);
    assert.equal(after.own_words.length, 1);
    await says(page, after.own_words[0], 'section.own');
    const first = (block) => block.sessions.filter((each) => each.week === 1);
    for (const [i, each] of first(after).entries()) {
      const rows = page.locator('.session').nth(i);
      for (const one of each.lines) {
        const was = first(before)[i].lines.find((old) => old.exercise === one.exercise)?.sets ?? 0;
        const mark = was === one.sets ? '' : was ? `changed: ${one.sets} sets, before ${was}` : 'changed: new here';
        const marks = await rows.locator('tr').filter({ has: page.locator('b', { hasText: one.name }) }).locator('.mark').allInnerTexts();
        assert.deepEqual(marks.filter((text) => text.startsWith('changed')), mark ? [mark] : [], `${one.name} of session ${i + 1}`);
      }
      const gone = first(before)[i].lines.filter((old) => !each.lines.some((one) => one.exercise === old.exercise));
      for (const old of gone) await rows.locator('.gone').filter({ hasText: old.name }).waitFor();
    }
    await picture(page, world.pictures, 'block-changed');
    await press(page, 'Take the last one back');
    await page.getByRole('heading', { name: 'Your own word on this block' }).waitFor({ state: 'detached' });
    assert.deepEqual(lines(await kept()), lines(before));
    await page.close();
  });
  test('a swap that cannot be is refused in the line’s panel, and the block stays', async () => {
    const before = await kept();
    const page = await open();
    const line = before.sessions[0].lines.find((each) => each.part === 'main_lift');
    await press(page, `Change, ${line.name}`);
    const choices = page.getByLabel('Swap it for');
    const values = await choices.locator('option').evaluateAll((all) => all.map((each) => each.value).filter(Boolean));
    assert.ok(values.length > 0 && !values.includes(line.exercise));
    const { exercises } = (await get(world.server.url, '/api/catalogue')).body;
    const own = exercises.find((each) => each.exercise === line.exercise);
    for (const value of values) {
      const other = exercises.find((each) => each.exercise === value);
      assert.ok(other.pattern === own.pattern || other.qualities.some((each) => own.qualities.includes(each)), value);
    }
    await page.getByLabel('Sets', { exact: true }).fill('10');
    await press(page, 'Hold it, with these sets');
    await page.locator('.panel .refusal').waitFor();
    assert.deepEqual(lines(await kept()), lines(before));
    await page.close();
  });
  test('with the keyboard alone: a line is held, and the word is taken back', async () => {
    const before = await kept();
    const page = await open();
    const [line] = before.sessions[0].lines;
    await tabTo(page, `Change, ${line.name}`);
    await page.keyboard.press('Enter');
    await tabTo(page, 'Hold it, with these sets');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'What moved, and why' }).waitFor();
    await page.locator('tr').filter({ hasText: line.name }).getByText('held by you').first().waitFor();
    await tabTo(page, 'Take the last one back');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Your own word on this block' }).waitFor({ state: 'detached' });
    assert.deepEqual(lines(await kept()), lines(before));
    await page.close();
  });
  for (const [device, width] of Object.entries(widths))
    test(`the open panels of a line fit a ${device} and have no violation`, async () => {
      const page = await open(width);
      await page.getByText('What this block gives').click();
      const [{ lines: [first, second] }] = (await kept()).sessions;
      await press(page, `Why, ${first.name}`);
      await press(page, `Change, ${second.name}`);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), 'no sideways scroll');
      assert.deepEqual(await violations(page), []);
      const low = await page.locator('main button:visible').evaluateAll((all) => all.filter((each) => each.getBoundingClientRect().height < 43.5).map((each) => each.outerHTML));
      assert.deepEqual(low, []);
      await picture(page, world.pictures, `block-panels-${device}`);
      await page.close();
    });
}
