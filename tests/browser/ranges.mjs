// Joint angles typed with big keys, the two sides, and the errors of the tests: pairs that disagree ask for a third,
// nothing is saved unseen, and every number on the page is the route's.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { keptLines, openPage, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
const plain = (text) => text.replace(/\s+/g, ' ').replaceAll('\u2212', '-');
const estimate = (s) => plain(`${fixed(s.value, s.decimals)} ${s.unit} (80 %: ${fixed(s.low, s.decimals)} to ${fixed(s.high, s.decimals)})`);
const signed = (x, decimals) => (x > 0 && /[1-9]/.test(x.toFixed(decimals)) ? '+' : '') + fixed(x, decimals).replace(/^\u2212(?=[0.]*$)/, '');
const difference = (s) => plain(`${signed(s.value, s.decimals)} ${s.unit} (80 %: ${signed(s.low, s.decimals)} to ${signed(s.high, s.decimals)})`);
const textOf = async (page) => plain(await page.locator('main').innerText());
const openAll = (page) => page.locator('details').evaluateAll((all) => all.forEach((each) => (each.open = true)));

export function rangesTests(world) {
  const open = async (athlete, width = widths.phone) => {
    const page = await openPage(world.browser, `${world.server.url}/#/joint_ranges/${athlete}`, width);
    page.keys = async (...readings) => {
      for (const reading of readings) {
        for (const key of reading) await page.getByRole('group', { name: 'Number keys' }).getByRole('button', { name: key, exact: true }).click();
        await page.getByRole('button', { name: 'Next', exact: true }).click();
      }
    };
    page.save = () => page.getByRole('button', { name: /^Save both|^Save, / }).click();
    page.of = (side) => page.getByRole('region', { name: new RegExp(side) });
    return page;
  };
  const nameWho = async (page) => {
    await page.getByLabel('Measured by').fill('Ines');
    await page.getByLabel('Tool').fill('inclinometer 2');
  };
  const today = async (athlete) => (await get(world.server.url, `/api/joint_ranges?athlete=${athlete}`)).body.days.find((day) => day.date === '2026-06-01');
  // A whole number of degrees near what is held, so that no question "Keep it?" comes between.
  const usual = async (athlete, angle) => {
    const { days } = (await get(world.server.url, `/api/joint_ranges?athlete=${athlete}`)).body;
    return Math.round(days[0].angles.find((each) => each.test === angle).mean.value);
  };
  const readingsOf = async (name, angle) => (await keptLines(world.server.url, 'test_results')).filter((line) => line.includes(name) && line.includes('2026-06-01') && line.includes(angle));

  test('without a rater and a tool nothing is saved', async () => {
    const page = await open('noor-ashgrove');
    await page.locator('input.reading').first().focus();
    await page.keys('110', '111');
    await page.save();
    await page.getByText('Say first who measures').waitFor();
    assert.equal(await page.evaluate(() => document.activeElement?.id), 'measuring-rater');
    assert.equal(await today('noor-ashgrove'), undefined);
    await page.close();
  });
  test('two readings a side, typed with the big keys, are kept with rater and tool, and shown as the route says', async () => {
    const page = await open('noor-ashgrove');
    await nameWho(page);
    await page.locator('input.reading').first().focus();
    await page.keys('110', '111.5', '104', '105');
    await page.save();
    await page.getByText('Saved.').nth(1).waitFor();
    await page.getByText('Held for this day: 110, 111.5 degrees.').waitFor();
    const day = await today('noor-ashgrove');
    assert.deepEqual(day.angles.map((each) => each.trials), [[110, 111.5], [104, 105]]);
    for (const { rater, device } of day.angles) assert.deepEqual([rater, device], ['Ines', 'inclinometer 2']);
    const text = await textOf(page);
    for (const { mean } of day.angles) assert.ok(text.includes(estimate(mean)), text);
    assert.equal(day.differences.length, 1);
    assert.ok(text.includes(difference(day.differences[0].difference)), text);
    assert.ok(text.includes(plain(day.differences[0].words)));
    assert.ok(await page.getByRole('button', { name: /Shoulder outward/ }).first().innerText().then((words) => words.includes('held for this day')));
    await page.close();
  });
  test('a pair that disagrees asks for a third before anything is kept, and the three are kept', async () => {
    const page = await open('saoirse-mallory');
    await nameWho(page);
    await page.getByRole('button', { name: /^Hip inward/ }).click();
    await page.locator('input.reading').first().focus();
    const near = await usual('saoirse-mallory', 'hip_internal_rotation');
    await page.keys(String(near - 2), String(near + 4));
    await page.getByText('Take a third reading').waitFor();
    assert.equal(await page.evaluate(() => document.activeElement.dataset.reading), '2', 'the third field has the focus');
    assert.deepEqual(await violations(page), []);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    await page.save();
    assert.equal(await today('saoirse-mallory'), undefined, 'saved only with a third, or as they are');
    await page.locator('input.reading[data-reading="2"]').focus();
    await page.keys(String(near));
    await page.getByRole('button', { name: /^Save these as they are/ }).click();
    await page.getByText('Saved.').waitFor();
    assert.deepEqual((await today('saoirse-mallory')).angles[0].trials, [near - 2, near + 4, near]);
    await page.close();
  });
  test('an angle far from expected asks “Keep it?” and is kept only then', async () => {
    const page = await open('emeka-harrowgate');
    await nameWho(page);
    const far = (await usual('emeka-harrowgate', 'shoulder_external_rotation')) - 40;
    await page.locator('input.reading').first().focus();
    await page.keys(String(far), String(far + 1));
    await page.save();
    await page.getByText('Keep it?').waitFor();
    assert.equal(await today('emeka-harrowgate'), undefined);
    await page.getByRole('button', { name: /^Keep it/ }).click();
    await page.getByText('Saved.').waitFor();
    assert.deepEqual((await today('emeka-harrowgate')).angles[0].trials, [far, far + 1]);
    await page.close();
  });
  test('a mistyped angle is refused beside its side, and stays typed', async () => {
    const page = await open('luca-thistlewood');
    await nameWho(page);
    await page.locator('input.reading').first().fill('1l0');
    await page.save();
    await page.locator('.refusal').filter({ hasText: '1l0' }).waitFor();
    assert.equal(await page.locator('input.reading').first().inputValue(), '1l0');
    assert.equal(await today('luca-thistlewood'), undefined);
    await page.close();
  });
  test('rater and tool stay for the next thrower, and what was typed for this one waits', async () => {
    const page = await open('keanu-longshore');
    await nameWho(page);
    await page.locator('input.reading').first().focus();
    await page.keys('115');
    await page.getByRole('link', { name: /^Next thrower/ }).click();
    await page.getByRole('heading', { level: 1, name: /Kenji Aldous/ }).waitFor();
    assert.equal(await page.getByLabel('Measured by').inputValue(), 'Ines');
    assert.equal(await page.getByLabel('Tool').inputValue(), 'inclinometer 2');
    assert.equal(await page.locator('input.reading').first().inputValue(), '');
    await page.getByLabel('Thrower').selectOption('keanu-longshore');
    await page.getByRole('heading', { level: 1, name: /Keanu Longshore/ }).waitFor();
    assert.equal(await page.locator('input.reading').first().inputValue(), '115');
    await page.close();
  });
  test('readings saved while the server is out of reach wait on the device, and arrive once', async () => {
    const page = await open('jonah-pellworm');
    await nameWho(page);
    await page.route('**/api/record_test', (route) => route.abort());
    await page.locator('input.reading').first().focus();
    const near = await usual('jonah-pellworm', 'shoulder_external_rotation');
    await page.keys(String(near), String(near + 1));
    await page.save();
    await page.getByText('The server does not answer. Kept on this device').waitFor();
    assert.equal((await readingsOf('Jonah', 'shoulder_external_rotation')).length, 0);
    await page.unroute('**/api/record_test');
    await page.reload();
    await page.getByText(/on this device to be sent/).waitFor({ state: 'detached', timeout: 15000 });
    assert.equal((await readingsOf('Jonah', 'shoulder_external_rotation')).length, 2);
    await page.close();
  });
  test('every angle the program measures has a drawing of its own, and its protocol', async () => {
    const { protocols } = (await get(world.server.url, '/api/joint_ranges?athlete=amara-tidewell')).body;
    const page = await open('amara-tidewell', widths.tablet);
    const drawings = [];
    for (const { name, protocol } of protocols) {
      await page.getByRole('button', { name: new RegExp(`^${name}`) }).first().click();
      drawings.push(await page.locator('figure > svg[role=img]').innerHTML());
      await openAll(page);
      assert.ok((await textOf(page)).includes(plain(protocol)), name);
    }
    assert.equal(new Set(drawings).size, protocols.length);
    await page.close();
  });
  test('what is held stands there as the route says: each side, total and difference, and never a flag', async () => {
    const { body: answer } = await get(world.server.url, '/api/joint_ranges?athlete=amara-tidewell');
    const page = await open('amara-tidewell', widths.desktop);
    await openAll(page);
    const text = await textOf(page);
    for (const day of answer.days) {
      for (const line of day.angles) assert.ok(text.includes(estimate(line.mean)), `${day.date} ${line.name}`);
      for (const line of day.totals) assert.ok(text.includes(estimate(line.total)), `${day.date} ${line.side}`);
      for (const line of day.differences) {
        assert.ok(text.includes(difference(line.difference)), `${day.date} ${line.what}: ${difference(line.difference)}`);
        assert.ok(text.includes(plain(line.words)), line.words);
      }
      for (const line of day.missing) assert.ok(text.includes(plain(line)), line);
    }
    for (const line of [...answer.words, ...answer.stop_and_refer]) assert.ok(text.includes(plain(line)), line);
    await page.close();
  });

  test('the sides of every test stand with their own interval around zero, the other formulas folded away', async () => {
    const { body: answer } = await get(world.server.url, '/api/sides?athlete=amara-tidewell');
    assert.ok(answer.tests.some((line) => line.over_total) && answer.tests.some((line) => !line.over_total));
    const page = await openPage(world.browser, `${world.server.url}/#/sides/amara-tidewell`);
    assert.equal(await page.getByText('Difference, of the larger').isVisible(), false);
    await openAll(page);
    const text = await textOf(page);
    for (const line of answer.tests) {
      for (const side of [line.main, line.other]) assert.ok(text.includes(estimate(side)), line.name);
      assert.ok(text.includes(difference(line.over_total ?? line.difference)), `${line.name}: ${difference(line.over_total ?? line.difference)}`);
      assert.ok(text.includes(plain(line.words)), line.words);
      for (const value of Object.values(line.rivals ?? {})) assert.ok(text.includes(plain(`${fixed(value, 1)} %`)), line.name);
    }
    for (const line of [...answer.words, ...answer.not_compared]) assert.ok(text.includes(plain(line)), line);
    // Zero lies on one line through every row of an axis, and what is less lies left of it.
    const rows = await page.locator('td.drawn svg').evaluateAll((all) => all.map((svg) => [Number(svg.querySelector('.zero').getAttribute('x1')), Number(svg.querySelector('circle').getAttribute('cx'))]));
    const shown = [...answer.tests.filter((line) => line.over_total).map((line) => line.over_total.value), ...answer.tests.filter((line) => !line.over_total).map((line) => line.difference.value)];
    assert.deepEqual(rows.map(([zero, dot]) => Math.sign(dot - zero)), shown.map(Math.sign));
    await page.close();
  });

  test('each test’s error stands as published, as this gym’s own and as both together', async () => {
    const { body: all } = await get(world.server.url, '/api/estimate_error');
    const page = await openPage(world.browser, `${world.server.url}/#/estimate_error`);
    const text = await textOf(page);
    for (const line of all.tests) {
      assert.ok(text.includes(plain(line.name)), line.name);
      for (const part of [line.trial, line.day]) assert.ok(text.includes(estimate(part.pooled)), line.name);
      assert.ok(text.includes(plain(`${fixed(line.smallest_detectable, line.decimals)} ${line.unit}`)), line.name);
    }
    await page.close();
    for (const name of ['throwing_velocity', 'hip_internal_rotation', 'broad_jump', 'split_squat_max']) {
      const [line] = (await get(world.server.url, `/api/estimate_error?test=${name}`)).body.tests;
      const one = await openPage(world.browser, `${world.server.url}/#/estimate_error/${name}`, widths.phone);
      const said = await textOf(one);
      for (const part of [line.trial, line.day]) {
        assert.ok(said.includes(plain(`${fixed(part.published, line.decimals)} ${line.unit}`)), name);
        assert.ok(said.includes(estimate(part.pooled)), name);
        assert.ok(said.includes(part.own ? estimate(part.own) : 'cannot tell yet'), name);
        assert.ok(said.includes(plain(part.words)), part.words);
      }
      await one.close();
    }
  });
  test('the pages are found from the test day and from the thrower', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/test_day`);
    await page.getByLabel(/^Test/).selectOption('grip_force');
    await page.getByRole('link', { name: /this test’s error/ }).click();
    await page.getByRole('heading', { level: 1, name: /Grip force/ }).waitFor();
    await page.goto(`${world.server.url}/#/test_day`);
    await page.getByRole('link', { name: /^Joint angles/ }).click();
    await page.getByRole('link', { name: 'Amara Tidewell' }).click();
    await page.getByRole('heading', { level: 1, name: /Amara Tidewell/ }).waitFor();
    await page.goto(`${world.server.url}/#/athlete_record/amara-tidewell`); // the same document: nothing is loaded to wait for
    await page.locator('main a[href="#/sides/amara-tidewell"]').waitFor();
    const links = await page.locator('main a').evaluateAll((all) => all.map((each) => each.getAttribute('href')));
    for (const name of ['ball_mass_line', 'load_velocity', 'joint_ranges', 'sides']) assert.ok(links.includes(`#/${name}/amara-tidewell`), name);
    await page.close();
  });
}
