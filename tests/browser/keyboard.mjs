// With the keyboard alone (Tab, typing and Enter): from the roster to a thrower, to the block, to a block planned anew.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, tabTo } from './browser.mjs';

export function keyboardTests(world) {
  test('with the keyboard alone: from the roster to a thrower to a planned block', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/roster`);
    await tabTo(page, 'Ingrid Vasquane');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Ingrid Vasquane' }).waitFor();
    await page.waitForLoadState('networkidle');
    await tabTo(page, 'Plan a block');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /Ingrid Vasquane: plan a block/ }).waitFor();
    await page.waitForLoadState('networkidle');
    await tabTo(page, 'Weeks (4 to 16)');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('5');
    await page.keyboard.press('Enter');
    await page.getByText('5 weeks, 3 sessions a week').waitFor();
    assert.equal((await get(world.server.url, '/api/block?block=ingrid-vasquane')).body.weeks, 5);
    await page.close();
  });
}
