// On paper: the sheet keeps its sessions and the stop signs, one page a week, with the thrower's name on each.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations } from './browser.mjs';

const sheets = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;

export function printTests(world) {
  test('in print the sheet keeps its sessions and the stop signs, and drops what is for a screen', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`);
    await page.emulateMedia({ media: 'print' });
    assert.ok(await page.getByText('Hex-bar deadlift, high handles').first().isVisible());
    assert.ok(await page.getByText('Sharp or sudden pain in the arm').isVisible());
    assert.ok(await page.getByText('Local rules and licensed practice come first.').isVisible());
    for (const gone of ['Print this week', 'Write the block'])
      assert.equal(await page.getByRole('button', { name: gone }).isVisible(), false, gone);
    await picture(page, world.pictures, 'block-print');
    await page.close();
  });
  for (const paper of ['Letter', 'A4'])
    test(`each week is one page of ${paper}, with the thrower's name and the stop signs`, async () => {
      for (const who of ['marisol-quay', 'tuva-skagen']) {
        const page = await openPage(world.browser, `${world.server.url}/#/plan_block/${who}`);
        assert.equal(sheets(await page.pdf({ format: paper })), 1, `${who}, one week`);
        await page.getByRole('button', { name: 'all weeks' }).click();
        await page.emulateMedia({ media: 'print' });
        assert.equal(await page.getByText('Sharp or sudden pain in the arm').count(), 4);
        assert.equal(await page.getByRole('heading', { name: /^Week \d: (Marisol Quay|Tuva Skagen)/ }).count(), 4);
        assert.equal(sheets(await page.pdf({ format: paper })), 4, `${who}, four weeks`);
        await page.close();
      }
    });
  for (const paper of ['Letter', 'A4'])
    test(`the thrower's sheets: a page of ${paper} a session, a box to tick for every set`, async () => {
      const { sessions } = (await get(world.server.url, '/api/block?block=marisol-quay&week=1')).body;
      const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`);
      await page.evaluate(() => { window.print = () => {}; }); // there is no printer's dialogue here
      await page.getByRole('button', { name: 'Print the thrower’s sheets' }).click();
      assert.equal(sheets(await page.pdf({ format: paper })), sessions.length);
      await page.emulateMedia({ media: 'print' });
      for (const [i, session] of sessions.entries()) {
        const sheet = page.locator('.thrower-sheet').nth(i);
        assert.ok(await sheet.getByText('Sharp or sudden pain in the arm').isVisible());
        assert.equal(await sheet.locator('.box').count(), session.lines.reduce((sum, line) => sum + line.sets, 0));
        const text = (await sheet.innerText()).replace(/\s+/g, ' ');
        for (const line of session.lines)
          for (const part of [line.name, line.dose.replace(' x ', ' × '), line.load_words]) assert.ok(text.includes(part.replace(/\s+/g, ' ')), part);
      }
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `thrower-sheets-${paper}`);
      await page.close();
    });
  test('on paper no number of a line is smaller than 11 points', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`);
    await page.emulateMedia({ media: 'print' });
    const small = await page.locator('.session tbody td:is(.dose, .rest, .load, .order):visible').evaluateAll((all) =>
      all.map((each) => parseFloat(getComputedStyle(each).fontSize) * 0.75).filter((points) => points < 10.99));
    assert.deepEqual(small, []);
    await page.close();
  });
}
