// The page of a block in another gym shows both sides of every line, what is kept and what is lost, as the route answers.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get, post } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
const plain = (text) => text.replace(/\s+/g, ' ');
const textOf = async (page) => plain(await page.locator('main').innerText());
const sheets = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;
const ask = async (world, block, kit) => (await post(world.server.url, '/api/retarget_block', { block, kit })).body;

async function opened(world, name = 'marisol-quay', width) {
  const page = await openPage(world.browser, `${world.server.url}/#/retarget_block/${name}`, width);
  await page.getByRole('heading', { name: 'Week 1' }).waitFor({ timeout: 60000 });
  return page;
}

export function retargetBlockTests(world) {
  test('each line of a week stands with what the other gym makes of it, its share kept and its loss in words', async () => {
    const made = await ask(world, 'marisol-quay', 'tuva-s-garage');
    const page = await opened(world);
    const text = await textOf(page);
    assert.ok(text.includes(plain(made.kept_words)), made.kept_words);
    assert.ok(made.kept > 20 && made.kept < 100, `${made.kept}`);
    for (const quality of made.qualities) assert.ok(text.includes(`${quality.name} ${fixed(quality.kept, 0)} %`), quality.name);
    const lines = made.sessions.filter((session) => session.week === 1).flatMap((session) => session.lines);
    const rows = page.locator('section.session tbody tr');
    assert.equal(await rows.count(), lines.length);
    for (const [i, line] of lines.entries()) {
      const said = plain(await rows.nth(i).innerText());
      assert.ok(said.includes(line.from.name), line.from.name);
      assert.ok(said.includes(plain(line.from.load_words)), line.from.load_words);
      if (!line.to) assert.ok(said.includes('lost'), said);
      else if (line.change === 'kept') assert.ok(said.includes('as written'), said);
      else {
        assert.ok(said.includes(line.to.name) && said.includes(plain(line.to.load_words)), `${line.to.name}: ${said}`);
        assert.ok(said.includes(`${fixed(line.kept.value, 0)} %`), `${line.kept.value}: ${said}`);
      }
      if (line.loss) assert.ok(said.includes(plain(line.loss)), line.loss);
      if (line.to_do) assert.ok(said.includes(plain(line.to_do)), line.to_do);
    }
    for (const line of [...made.notes, ...made.cannot_tell]) assert.ok(text.includes(plain(line)), line);
    await page.close();
  });
  test('the set-up of a lift held otherwise opens with the load that asks the same and its interval', async () => {
    // A coach's own block: what the planner chooses need not be held otherwise in the garage.
    const squats = [1, 2, 3, 4].map((week) => `${week},1,monday,"Rear-foot-elevated split squat, straight bar",3,5,95,2\n`).join('');
    const text = `week,session,weekday,exercise,sets,reps,load_lb,reserve\n${squats}`;
    assert.equal((await post(world.server.url, '/api/import_block', { athlete: 'greta-holloway', text, start: '2026-06-08', kit: 'saltgrass-hall', keep: true })).body.kept, true);
    const made = await ask(world, 'greta-holloway', 'tuva-s-garage');
    const page = await opened(world, 'greta-holloway');
    const held = made.sessions[0].lines.find((line) => line.set_up && line.equal);
    assert.ok(held, 'no line with an equal load');
    await page.locator('summary', { hasText: held.to.name }).first().click();
    const said = await textOf(page);
    const { value, low, high, unit, decimals } = held.equal;
    assert.ok(said.includes(`${fixed(value, decimals)} ${unit} (80 %: ${fixed(low, decimals)} to ${fixed(high, decimals)})`), said);
    await page.close();
  });
  for (const [device, width] of Object.entries(widths))
    test(`a block in another gym fits a ${device}, with no accessibility violation`, async () => {
      const page = await opened(world, 'marisol-quay', width);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `retarget-${device}`);
      await page.close();
    });
  for (const paper of ['Letter', 'A4'])
    test(`each week in another gym is one page of ${paper}, with both gyms, the thrower and the stop signs`, async () => {
      const page = await opened(world);
      assert.equal(sheets(await page.pdf({ format: paper })), 1, 'one week');
      await page.getByRole('button', { name: 'all weeks' }).click();
      await page.emulateMedia({ media: 'print' });
      assert.equal(await page.getByRole('heading', { name: /^Week \d: Marisol Quay, Saltgrass hall/ }).count(), 4);
      assert.equal(await page.getByText('Sharp or sudden pain in the arm').count(), 4);
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, 'retarget-print');
      assert.equal(sheets(await page.pdf({ format: paper })), 4, 'four weeks');
      await page.close();
    });
  test('kept, the block for the other gym is its own; the first one stays', async () => {
    const before = (await get(world.server.url, '/api/block?block=tuva-skagen')).body;
    const page = await opened(world, 'tuva-skagen');
    await page.getByRole('button', { name: 'Keep it as a block of its own' }).click();
    await page.getByText(/Kept as tuva-skagen-/).waitFor();
    const kept = `${before.block}-saltgrass-hall`;
    assert.ok((await textOf(page)).includes(kept), kept);
    const made = (await get(world.server.url, `/api/block?block=${kept}`)).body;
    assert.equal(made.kit, 'Saltgrass hall');
    const after = (await get(world.server.url, `/api/block?block=${before.block}`)).body;
    assert.deepEqual(after.sessions, before.sessions);
    await page.close();
  });
  test('a thrower without a block is sent to plan one', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/retarget_block/finn-abernarrow`);
    await page.getByText('No block is kept yet.').waitFor();
    assert.equal(await page.getByRole('link', { name: 'Plan one' }).getAttribute('href'), '#/plan_block/finn-abernarrow');
    await page.close();
  });
}
