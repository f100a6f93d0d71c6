// Every page, at three widths and in print: no script error, no sideways scroll, no accessibility violation.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const pages = ['roster', 'athlete_record/marisol-quay', 'athlete_record/finn-abernarrow', 'plan_block', 'plan_block/marisol-quay',
               'plan_block/tuva-skagen', 'test_day', 'load_bar', 'import_records', 'method', 'method/one_rep_max', 'no_such_page'];

export function everyPageTests(world) {
  for (const [device, width] of Object.entries(widths))
    test(`every page on a ${device}`, async () => {
      for (const name of pages) {
        const page = await openPage(world.browser, `${world.server.url}/#/${name}`, width);
        const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        assert.ok(beyond <= 0, `${name} scrolls sideways by ${beyond} px at ${width}`);
        assert.deepEqual(await violations(page), [], `${name} at ${width}`);
        assert.deepEqual(page.faults, [], name);
        await picture(page, world.pictures, `${name.replaceAll('/', '-')}-${device}`);
        await page.close();
      }
    });
  test('in print the sheet keeps its sessions and the stop signs, and drops what is for a screen', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`);
    await page.emulateMedia({ media: 'print' });
    assert.ok(await page.getByText('Sharp or sudden pain in the arm').isVisible());
    assert.equal(await page.getByRole('button', { name: 'Print this week' }).isVisible(), false);
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'block-print');
    await page.close();
  });
}
