// What goes with velocity: the page's numbers are the route's, and the fit behind it can be made anew, watched and stopped.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, violations, widths } from './browser.mjs';

const fixed = (x, decimals) => { const text = x.toFixed(decimals); return /[1-9]/.test(text) ? text.replace('-', '\u2212') : text.replace('-', ''); };
const signed = (x, decimals) => (x > 0 && /[1-9]/.test(fixed(x, decimals)) ? `+${fixed(x, decimals)}` : fixed(x, decimals));
const plain = (text) => text.replace(/\s+/g, ' ').trim();
const slope = ({ value, low, high, unit }) => `${signed(value, 1)} ${unit} (80 %: ${signed(low, 1)} to ${signed(high, 1)})`;
const verdicts = { goes_with: 'goes with it', goes_against: 'goes against it', cannot_tell: 'cannot tell' };

async function opened(world, width) {
  const page = await openPage(world.browser, `${world.server.url}/#/explain_velocity`, width);
  await page.locator('tbody tr').first().waitFor({ timeout: 120000 });
  return page;
}

export function explainVelocityTests(world) {
  test('every slope, verdict and share on the page of what goes with velocity is the route’s', async () => {
    const page = await opened(world);
    const { body } = await get(world.server.url, '/api/explain_velocity');
    const rows = (await page.locator('tbody tr').allInnerTexts()).map(plain);
    assert.equal(rows.length, body.qualities.length);
    body.qualities.forEach((line, i) => {
      assert.ok(rows[i].startsWith(line.name), rows[i]);
      assert.ok(rows[i].includes(`${slope(line.within)} ${verdicts[line.within_verdict]}`), `${rows[i]}: ${slope(line.within)}`);
      assert.ok(rows[i].includes(`${slope(line.between)} ${verdicts[line.between_verdict]}`), `${rows[i]}: ${slope(line.between)}`);
      const own = `${Math.round(100 * line.within_learned)} % and ${Math.round(100 * line.between_learned)} %`;
      assert.ok(rows[i].includes(own), `${rows[i]}: ${own}`);
      assert.ok(rows[i].includes(line.correlation === null ? 'too few pairs' : fixed(line.correlation, 2)), rows[i]);
    });
    await page.close();
  });
  test('the fit behind the page is made anew, watched and stopped, on a phone', async () => {
    const page = await opened(world, widths.phone);
    const panel = page.getByRole('region', { name: 'The fit behind this page' });
    await panel.getByText(/The kept fit is of \d+ readings/).waitFor({ timeout: 120000 });
    await panel.getByRole('button', { name: 'Fit and check the intervals' }).click();
    await panel.getByText(/The fit is running: about \d+\s% done/).waitFor({ timeout: 30000 });
    assert.deepEqual(await violations(page), []);
    await panel.getByRole('button', { name: 'Stop' }).click();
    await panel.getByText('The fit was stopped; the one before stays in place.').waitFor({ timeout: 120000 });
    await panel.getByRole('button', { name: 'Fit again' }).click();
    await panel.getByText(/The fit is running/).waitFor({ timeout: 30000 });
    await panel.getByText(/The kept fit is of \d+ readings/).waitFor({ timeout: 120000 });
    const { body } = await get(world.server.url, '/api/explain_velocity');
    assert.ok(plain(await panel.innerText()).includes(`${body.readings} readings`));
    await page.close();
  });
}
