// The stop signs: one tap away, on one sheet for a wall; pain and clearances written down once, also when the server is away.
import assert from 'node:assert/strict';
import { newHall, serve, test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

export function stopAndReferTests(world) {
  const painsOf = async (server, athlete) => (await get(server.url, `/api/stop_and_refer?athlete=${athlete}`)).body.pains;

  test('one tap leads from any page, scrolled or not, to the signs, those of today first and all on one sheet of paper', async () => {
    const { signs, closing } = (await get(world.server.url, '/api/stop_and_refer')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/load_bar`, widths.phone);
    await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
    await page.getByRole('link', { name: 'Stop signs' }).click();
    await page.getByRole('heading', { name: 'Stop, and to a clinician' }).waitFor();
    assert.deepEqual(await page.locator('[data-sign]').allInnerTexts(), signs.map((each) => each.sentence));
    const ends = signs.findIndex((each) => !each.today);
    assert.ok(ends > 0 && signs.slice(ends).every((each) => !each.today));
    assert.equal(await page.locator('ul').first().locator('[data-sign]').count(), ends, 'those of today stand by themselves');
    await page.getByText(closing).waitFor();
    const sheets = (await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b/g).length;
    assert.equal(sheets, 1);
    await page.emulateMedia({ media: 'print' });
    // Arm's length, 60 to 80 cm, wants capitals of 3 mm or more: 18 points (common practice of signs, no source).
    const points = await page.locator('[data-sign]').evaluateAll((all) => all.map((each) => parseFloat(getComputedStyle(each).fontSize) * 0.75));
    assert.ok(points.every((each) => each >= 17.9), points.join(' '));
    await page.close();
  });
  test('from a thrower’s page, and from a block’s, the tap leads to that thrower', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/next_test/finn-abernarrow`);
    await page.getByRole('link', { name: 'Stop signs' }).click();
    await page.getByRole('heading', { name: 'Stop signs: Finn Abernarrow' }).waitFor();
    const { guardian } = (await get(world.server.url, '/api/stop_and_refer?athlete=finn-abernarrow')).body;
    assert.ok(guardian.length > 0 && (await page.getByText(guardian).isVisible()), 'a minor’s guardian is named');
    const { block } = (await get(world.server.url, '/api/block?block=marisol-quay')).body;
    await page.goto(`${world.server.url}/#/stop_and_refer/${block}`);
    await page.getByRole('heading', { name: 'Stop signs: Marisol Quay' }).waitFor();
    await page.close();
  });
  test('pain is written down, blocks, waits on the device when the server is away, is never sent twice, and a clearance is added', async () => {
    const store = newHall(); // pain cannot be deleted: a store of its own
    let server = await serve(store, world.pages);
    const page = await openPage(world.browser, `${server.url}/#/stop_and_refer/finn-abernarrow`, widths.phone);
    const form = page.getByRole('form', { name: 'Write down pain' });
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.locator('.refusal').waitFor(); // nothing typed: refused beside the field, nothing kept
    await form.getByRole('radio', { name: 'elbow', exact: true }).check();
    await form.getByLabel('In the thrower’s words').fill('inside of the elbow, since Saturday');
    await form.getByLabel('Who writes this down').fill('Kim Osei');
    await form.getByRole('button', { name: 'Write it down' }).click();
    const entry = page.locator('li[data-number="1"]');
    await entry.getByText('inside of the elbow, since Saturday').waitFor();
    const [kept] = await painsOf(server, 'finn-abernarrow');
    assert.deepEqual([kept.region, kept.noted_by, kept.open, kept.date], ['elbow', 'Kim Osei', true, '2026-06-01']);
    assert.match(await entry.innerText(), /Open: .*no throws/s);
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'pain-written-phone');

    await server.kill('SIGKILL');
    await form.getByRole('radio', { name: 'low back', exact: true }).check();
    await form.getByLabel('In the thrower’s words').fill('low back when arching');
    await form.getByRole('button', { name: 'Write it down' }).click(); // who writes is still known
    await form.getByText('It stops today all the same').waitFor();
    await page.getByRole('link', { name: 'Stop signs (1 not sent)' }).waitFor();
    server = await serve(store, world.pages, server.port);
    let lost = 0; // the server keeps it, its answer is lost on the way
    await page.route('**/api/record_pain', async (route) => (lost++ === 0 ? (await route.fetch(), await route.abort()) : route.continue()));
    await page.getByRole('button', { name: 'Send now' }).click();
    await page.locator('li[data-number="2"]').getByText('low back when arching').waitFor({ timeout: 15000 }); // sent again by itself
    assert.ok(lost > 1);
    assert.equal((await painsOf(server, 'finn-abernarrow')).length, 2, 'two entries, not three');
    await page.getByRole('link', { name: 'Stop signs (1 to read)' }).waitFor(); // it was sent while nobody looked
    const note = page.getByRole('alert').filter({ hasText: 'low back when arching' });
    await note.getByText('Tell the Abernarrow family.').waitFor();
    assert.deepEqual(await violations(page), []);
    await note.getByRole('button', { name: /^Read: put it away/ }).click();
    await page.getByRole('link', { name: 'Stop signs', exact: true }).waitFor();

    await entry.getByText('A clinician has cleared this').click();
    await entry.getByLabel('Clinician, by name and trade').fill('Finn Abernarrow');
    await entry.getByRole('button', { name: 'Keep this clearance' }).click();
    await entry.getByText('Nobody clears their own pain').waitFor();
    await entry.getByLabel('Clinician, by name and trade').fill('Dr. Ada Fenwick, sports physician');
    await entry.getByLabel('Limits and conditions').fill('30 throws at most for two weeks');
    await entry.getByRole('button', { name: 'Keep this clearance' }).click();
    await entry.getByText(/^Cleared on 2026-06-01 by Dr. Ada Fenwick/).waitFor();
    assert.match((await painsOf(server, 'finn-abernarrow')).find((each) => each.number === 1).clearance, /Kim Osei.*30 throws/);
    await page.close();
    await server.kill();
  });
  test('without the server the signs are still there', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/load_bar`);
    await page.route('**/api/**', (route) => route.abort());
    await page.getByRole('link', { name: 'Stop signs' }).click();
    await page.getByText('those kept on this device').waitFor();
    assert.ok((await page.locator('[data-sign]').count()) > 8);
    await page.close();
  });
  test('without the server a block’s page leads to its thrower, and an address nobody knows asks whose pain it is', async () => {
    const { block } = (await get(world.server.url, '/api/block?block=marisol-quay')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/${block}`);
    await page.getByRole('heading', { name: /^Marisol Quay/ }).first().waitFor();
    await page.route('**/api/**', (route) => route.abort());
    await page.getByRole('link', { name: 'Stop signs' }).click();
    await page.getByRole('heading', { name: 'Stop signs: Marisol Quay' }).waitFor();
    assert.equal(await page.getByLabel('Thrower', { exact: true }).inputValue(), 'marisol-quay');
    await page.goto(`${world.server.url}/#/stop_and_refer/a-block-of-nobody`);
    const form = page.getByRole('form', { name: 'Write down pain' });
    await page.getByLabel('Whose pain is it?').waitFor();
    assert.equal(await form.count(), 0);
    await page.getByLabel('Whose pain is it?').fill('Finn Abernarrow');
    await form.getByRole('radio', { name: 'elbow', exact: true }).check();
    await form.getByLabel('In the thrower’s words').fill('inside of the elbow');
    await form.getByLabel('Who writes this down').fill('Kim Osei');
    await form.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Pain: Finn Abernarrow').waitFor();
    const kept = await page.evaluate(() => new Promise((done) => {
      indexedDB.open('amentum-outbox').onsuccess = ({ target }) => {
        target.result.transaction('waiting').objectStore('waiting').getAll().onsuccess = (all) => done(all.target.result.map((each) => each.body.athlete));
      };
    }));
    assert.deepEqual(kept, ['finn-abernarrow']);
    await page.close();
  });
}
