// On paper: the sheet keeps its sessions and the stop signs, one page a week, with the thrower's name on each.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { openPage, picture, violations } from './browser.mjs';
import { everyPage } from './every_page.mjs';

const sheets = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;

export function printTests(world) {
  test('no page has an accessibility violation in print', async () => {
    for (const name of everyPage) {
      const page = await openPage(world.browser, `${world.server.url}/#/${name}`);
      await page.emulateMedia({ media: 'print' });
      assert.deepEqual(await violations(page), [], name);
      await page.close();
    }
  });
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
}
