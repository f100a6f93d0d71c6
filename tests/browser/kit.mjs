// The page of what stands in the gym: every number is the route's, and weighing an item asks, refuses and keeps.
import assert from 'node:assert/strict';
import { newHall, serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
const textOf = async (page) => (await page.locator('main').innerText()).replace(/\s+/g, ' ');

export function kitTests(world) {
  test('loads, gaps, items and purchases stand on the page as the route answers them', async () => {
    const { body } = await get(world.server.url, '/api/kit?kit=saltgrass-hall');
    assert.ok(body.prescribed.sets > 0 && body.loads.length > 5 && body.items.length > 20);
    const page = await openPage(world.browser, `${world.server.url}/#/kit/saltgrass-hall`);
    for (const summary of await page.locator('details summary').all()) await summary.click();
    const text = await textOf(page);
    const lines = await page.locator('.lines section').all();
    assert.equal(lines.length, body.loads.length);
    for (const [i, line] of body.loads.entries()) {
      const shown = (await lines[i].innerText()).replace(/\s+/g, ' ');
      for (const each of [line.what, `Loads ${line.loads}`, `${fixed(line.lightest, 1)}, ${fixed(line.heaviest, 1)} ${body.unit}`])
        assert.ok(shown.includes(each), `${line.what}: ${each}`);
      if (line.loads > 1) assert.ok(shown.includes(`Smallest step ${fixed(line.smallest_step, 2)} lb Usual step ${fixed(line.usual_step, 2)} lb`), shown);
      for (const gap of line.gaps) assert.ok(shown.includes(`${fixed(gap.from, 1)} to ${fixed(gap.to, 1)} lb: ${fixed(gap.percent, 0)} % apart`), line.what);
    }
    for (const item of body.items) {
      assert.ok(text.includes(`${item.count} × ${item.label}`), item.label);
      assert.ok(text.includes(item.words), `${item.label}: ${item.words}`);
    }
    const { prescribed } = body;
    assert.ok(text.includes(prescribed.words), prescribed.words);
    const rows = await page.locator('tbody tr').allInnerTexts();
    const wanted = prescribed.purchases.map((each) => [each.what, each.more, each.made, each.exactly, `${fixed(each.lacking_percent, 2)} %`].join(' '));
    if (wanted.length) wanted.unshift(`the kit as it is 0 ${prescribed.made} ${prescribed.exactly} ${fixed(prescribed.lacking_percent, 2)} %`);
    assert.deepEqual(rows.map((row) => row.replace(/\s+/g, ' ').trim()), wanted);
    await page.close();
  });
  for (const [device, width] of Object.entries(widths))
    test(`the kit with a form to weigh, open, on a ${device}`, async () => {
      const page = await openPage(world.browser, `${world.server.url}/#/kit/saltgrass-hall`, width);
      await page.getByRole('button', { name: 'Weigh 45 lb plate', exact: true }).click();
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `kit-weigh-${device}`);
      await page.close();
    });
  test('weighing: kept, held already, asked about, refused in a sentence', async () => {
    const store = newHall();
    const server = await serve(store, world.pages);
    const plate = async () => (await get(server.url, '/api/kit?kit=saltgrass-hall')).body.items.find((each) => each.label === '45 lb plate');
    const page = await openPage(world.browser, `${server.url}/#/kit/saltgrass-hall`);
    await page.getByRole('button', { name: 'Weigh 45 lb plate', exact: true }).click();
    const form = page.getByRole('form', { name: 'Weigh 45 lb plate' });
    const weigh = async (mass) => {
      await form.getByLabel('The scale shows, lb').fill(mass);
      await form.getByRole('button', { name: 'Keep this mass' }).click();
    };
    await weigh('44,6');
    await form.getByText('45 lb plate counts as 44.6 lb, 0.9 % under its stamp from now on.').waitFor();
    await page.getByText('44.6 lb, 0.9 % under its stamp', { exact: true }).waitFor();
    assert.equal((await plate()).mass, 44.6);
    await weigh('44.6');
    await form.getByText('nothing is changed').waitFor();
    await weigh('41');
    await form.getByText('8.9 % under the stamp').waitFor();
    assert.equal((await plate()).mass, 44.6);
    await form.getByRole('button', { name: 'Yes, keep it' }).click();
    await form.getByText('counts as 41 lb').waitFor();
    assert.equal((await plate()).mass, 41);
    await weigh('20.4');
    await form.locator('.refusal').getByText('another unit').waitFor();
    await weigh('4o');
    await form.locator('.refusal').waitFor();
    assert.equal((await plate()).mass, 41);
    await page.close();
    await server.kill();
  });
}
