// The second look at everything planned: every finding of the route, stops first, with rule, source and who may answer.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, widths } from './browser.mjs';

const plain = (text) => text.replace(/\u00a0/g, ' ').replace(/\u2212/g, '-').replace(/\s+/g, ' ');

export function checkPlanTests(world) {
  test('every finding on what is planned stands on the page as the route gives it, stops first', async () => {
    const { plans } = (await get(world.server.url, '/api/check_plan')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/check_plan`);
    await page.locator('section[data-athlete]').first().waitFor();
    for (const plan of plans) {
      const section = page.locator(`section[data-athlete=${plan.athlete}]`);
      const text = plain(await section.textContent());
      for (const line of plan.checked) assert.ok(text.includes(line), line);
      for (const finding of plan.findings)
        for (const part of [finding.sentence, finding.what_to_do, finding.rule, finding.source]) assert.ok(text.includes(plain(part)), `${plan.name}: ${part}`);
      assert.equal(await section.locator('.finding').count(), plan.findings.length);
      const stops = plan.findings.filter((each) => each.severity === 'stops').length;
      assert.equal(await section.locator('.finding.stops').count(), stops);
      for (let i = 0; i < stops; i += 1) assert.ok((await section.locator('.finding').nth(i).getAttribute('class')).includes('stops'));
    }
    const first = plans.find((each) => each.findings.some((finding) => finding.severity === 'stops'));
    await page.setViewportSize({ width: widths.phone, height: 900 });
    await page.getByRole('link', { name: first.name, exact: true }).click();
    await page.getByRole('heading', { name: `Checked anew: ${first.name}` }).waitFor();
    await page.getByText(/^(Nobody can set this one aside|A coach may answer for this one)/).first().waitFor();
    assert.equal(await page.getByRole('link', { name: `The arm of ${first.name}` }).getAttribute('href'), `#/check_arm/${first.athlete}`);
    await page.close();
  });
}
