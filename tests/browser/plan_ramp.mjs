// A ramp is planned, changed by hand, checked, kept and printed on one page; a clinician's plan is the clinician's and gates it.
import assert from 'node:assert/strict';
import { newHall, serve, test } from '../http/program.mjs';
import { get, post } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const sheets = (pdf) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;
const throwsOf = (page) => page.getByLabel(/^Throws, step /).evaluateAll((all) => all.map((each) => Number(each.value)));

export function planRampTests(world) {
  test('a ramp: the route’s steps by week, a step changed by hand and checked, kept, and one page on paper', async () => {
    const server = await serve(newHall(), world.pages);
    const asked = (await post(server.url, '/api/plan_ramp', { athlete: 'marisol-quay', target_week: 200, week_before: 60 })).body;
    const page = await openPage(world.browser, `${server.url}/#/plan_ramp/marisol-quay`);
    await page.getByText('No steps are in force').waitFor();
    await page.getByLabel('Throws of a week at the end').fill('200');
    await page.getByLabel(/^Throws of the week before/).fill('60');
    await page.getByRole('button', { name: 'Plan the steps' }).click();
    await page.getByLabel('Throws, step 1', { exact: true }).waitFor();
    assert.deepEqual(await throwsOf(page), asked.steps.map((each) => each.throws));
    for (const [i, week] of asked.weeks.entries()) await page.getByRole('heading', { name: `Week ${i + 1}, from ${week.monday}: ${week.throws} throws` }).waitFor();
    for (const step of asked.steps) assert.ok((await page.locator('.steps').first().innerText()).includes(step.date), step.date);
    await picture(page, world.pictures, 'plan-ramp-planned-desktop');

    await page.getByLabel('Throws, step 2', { exact: true }).fill('120');
    assert.ok(await page.getByRole('button', { name: 'Keep this ramp' }).isDisabled(), 'checked before it is kept');
    await page.getByRole('button', { name: 'Check these steps' }).click();
    await page.getByText(/^Step 2: 120 throws/).waitFor();
    await page.getByLabel('Who keeps it').fill('Kim Osei');
    await page.getByRole('button', { name: 'Keep this ramp' }).click();
    await page.getByRole('heading', { name: 'A ramp, kept by Kim Osei' }).waitFor();
    await page.reload();
    const { steps: [kept] } = (await get(server.url, '/api/check_arm?athlete=marisol-quay&days=7')).body;
    const list = page.locator('article[data-origin=ramp] li');
    await list.first().waitFor();
    const shown = await list.evaluateAll((all) => all.map((each) => Number(each.querySelector('.what b').textContent.split(' ')[0])));
    assert.deepEqual(shown, kept.list.map((each) => each.throws), 'as written, also after a reload');
    assert.equal(kept.list.length, asked.steps.length);
    assert.match(await list.nth(kept.step - 1).innerText(), new RegExp(`next\\s*from ${kept.earliest}`));
    await page.getByRole('button', { name: 'Change these steps' }).click();
    assert.deepEqual(await throwsOf(page), shown);
    await page.reload();
    await list.first().waitFor();
    assert.deepEqual(await violations(page), []);
    for (const format of ['Letter', 'A4']) assert.equal(sheets(await page.pdf({ format })), 1, format);
    await page.emulateMedia({ media: 'print' });
    assert.ok(await page.getByText('Sharp or sudden pain in the arm').isVisible());
    assert.equal(await page.getByLabel('The clinician, by name and trade').isVisible(), false);
    await picture(page, world.pictures, 'plan-ramp-print');
    await page.close();
    await server.kill();
  });
  test('a clinician’s plan is entered as written, by name; then no ramp is planned beside it, and the page says where to go', async () => {
    const server = await serve(newHall(), world.pages);
    const page = await openPage(world.browser, `${server.url}/#/plan_ramp/finn-abernarrow`, widths.phone);
    await page.getByText('The tool neither writes such a plan, nor changes, nor clears one.').waitFor();
    await page.locator('summary').filter({ hasText: 'Enter a clinician’s plan' }).click();
    const plan = page.locator('section.clinician');
    await plan.getByLabel('Throws, written step 1').fill('500');
    await plan.getByLabel('In words, written step 1').fill('easy toss');
    await plan.getByLabel('The clinician, by name and trade').fill('Ada Fenwick, physiotherapist');
    await plan.getByLabel('The adult who enters it').fill('Kim Osei');
    await plan.getByRole('button', { name: 'Keep the clinician’s plan' }).click();
    await plan.locator('[data-step="1"] [role=alert]').waitFor(); // 1 to 400 throws a step
    assert.equal(await plan.getByLabel('In words, written step 1').inputValue(), 'easy toss');
    await plan.getByLabel('Throws, written step 1').fill('25');
    await plan.getByRole('button', { name: 'Keep the clinician’s plan' }).click();
    await page.getByRole('heading', { name: 'The plan of Ada Fenwick, physiotherapist, a clinician’s' }).waitFor();
    await page.getByRole('button', { name: 'Plan the steps' }).click();
    await page.getByText('A clinician\'s plan is in force (Ada Fenwick').waitFor();
    assert.equal(await page.getByRole('link', { name: 'What is open, and when to see a clinician' }).getAttribute('href'), '#/stop_and_refer/finn-abernarrow');
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    assert.deepEqual(await violations(page), []);
    await picture(page, world.pictures, 'return-plan-phone');
    await page.close();
    await server.kill();
  });
}
