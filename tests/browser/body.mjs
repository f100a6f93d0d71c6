// The body as a plate, the lead leg at landing and the overhead throw: every number shown is the route's, and what is typed
// wrong is refused in a sentence.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const plain = (text) => text.replace(/\s+/g, ' ').replaceAll('\u2212', '-');
const fixed = (x, decimals) => x.toFixed(decimals).replace('-', '\u2212');
const withUnit = (shown) => `${fixed(shown.value, shown.decimals)} ${shown.unit}`;
const between = (shown) => `${fixed(shown.low, shown.decimals)} to ${fixed(shown.high, shown.decimals)}`;
const signed = (x) => (Math.round(x) > 0 ? `+${fixed(x, 0)}` : fixed(x, 0).replace(/^\u22120$/, '0'));

export function bodyTests(world) {
  const open = (name, width) => openPage(world.browser, `${world.server.url}/#/${name}/marisol-quay`, width);
  const textOf = async (page) => plain(await page.locator('main').innerText());

  test('the plate and the table of a body bear the route’s lengths and masses', async () => {
    const { body: answer } = await get(world.server.url, '/api/describe_body?athlete=marisol-quay&table=de_leva');
    const page = await open('describe_body');
    const { length_unit: length, mass_unit: mass } = answer.body;
    const drawn = plain((await page.locator('svg[role=img]').first().locator('text').allTextContents()).join(' | '));
    const rows = await page.locator('table').last().locator('tbody tr').evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent)));
    for (const [i, part] of answer.parts.entries()) {
      assert.ok(drawn.includes(`${part.name} | ${fixed(part.length, 1)} ${length}, ${fixed(part.mass, 1)} ${mass}`), `${part.row}: ${drawn}`);
      assert.deepEqual(rows[i].slice(1, 5), [part.length, part.mass, part.centre, part.radius].map((each) => fixed(each, 1)));
    }
    const text = await textOf(page);
    for (const line of [...answer.words, ...answer.tape_next]) assert.ok(text.includes(plain(line)), line);
    await page.close();
  });
  test('a length tried changes the figure and is not kept; one no such body has is refused', async () => {
    const page = await open('describe_body', widths.phone);
    await page.getByText('Try lengths of a tape; nothing is kept').click();
    await page.getByLabel('Thigh, in').fill('18,5');
    await page.getByRole('button', { name: 'Show with these' }).click();
    await page.locator('svg[role=img]').first().getByText(/^18\.5 in/).waitFor();
    await page.getByLabel('Thigh, in').fill('90');
    await page.getByRole('button', { name: 'Show with these' }).click();
    await page.locator('.refusal').waitFor();
    await page.reload();
    await page.locator('svg[role=img]').first().waitFor();
    assert.equal(await page.locator('svg[role=img]').first().getByText(/^18\.5 in/).count(), 0);
    await page.close();
  });
  test('the lead leg at landing is the route’s answer, drawn, and goes when a number changes', async () => {
    const { body: answer } = await get(world.server.url, '/api/measure_lead_leg?athlete=marisol-quay&force_x_bw=-0.7&force_y_bw=1.5&pressure_in=2&shin_lean_deg=-10&thigh_deg=55');
    for (const [device, width] of Object.entries(widths)) {
      const page = await open('measure_lead_leg', width);
      for (const [label, value] of [['Forward (braking', '-0,7'], ['Pressure ahead', '2'], ['Shin, leaning', '-10'], ['Thigh, hip behind', '55']]) await page.getByLabel(label).fill(value);
      await page.getByLabel('Up', { exact: true }).fill('1.5');
      await page.getByRole('button', { name: 'Show the moments' }).click();
      await page.locator('svg[role=img]').first().waitFor();
      const text = await textOf(page);
      for (const joint of answer.joints) assert.ok(text.includes(plain(`${withUnit(joint.moment)} (80 %: ${between(joint.moment)})`)), joint.joint);
      for (const line of [...answer.words, ...answer.cautions]) assert.ok(text.includes(plain(line)), line);
      assert.deepEqual(await violations(page), []);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
      await picture(page, world.pictures, `lead-leg-${device}`);
      await page.getByLabel('Thigh, hip behind').fill('5s');
      assert.equal(await page.locator('svg[role=img]').count(), 0, 'moments never stand beside a motion they do not belong to');
      await page.getByRole('button', { name: 'Show the moments' }).click();
      await page.locator('.refusal').filter({ hasText: '5s' }).waitFor();
      await page.close();
    }
  });
  test('an overhead throw is the route’s answer, kneeling and standing', async () => {
    const motion = { thigh: ['85'], trunk: ['80', '-200'], upper_arm: ['100', '-600', '-5000'], forearm: ['130', '-900', '-10000'] };
    const names = { shank: 'Shank', thigh: 'Thigh', trunk: 'Trunk', upper_arm: 'Upper arm', forearm: 'Forearm' };
    for (const [stance, links] of [['kneeling', motion], ['standing', { shank: ['70'], ...motion }]]) {
      const query = Object.entries(links).flatMap(([link, values]) => values.map((value, i) => `${link}_${['deg', 'rate', 'acceleration'][i]}=${value}`));
      const { body: answer } = await get(world.server.url, `/api/measure_ball_throw?athlete=marisol-quay&stance=${stance}&ball_lb=4&${query.join('&')}`);
      const page = await open('measure_ball_throw');
      await page.getByLabel('Stance').selectOption(stance);
      await page.getByLabel('Ball, lb').fill('4');
      for (const [link, values] of Object.entries(links))
        for (const [i, value] of values.entries()) await page.getByRole('group', { name: names[link], exact: true }).locator('input').nth(i).fill(value);
      await page.getByRole('button', { name: 'Show the moments' }).click();
      await page.locator('svg[role=img]').first().waitFor();
      const rows = await page.locator('table tbody tr').evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent)));
      assert.deepEqual(rows, answer.joints.map((joint) => [joint.name, `${signed(joint.moment)} 80 %: ${signed(joint.low)} to ${signed(joint.high)}`, signed(joint.still), joint.words]));
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `ball-throw-${stance}`);
      await page.close();
    }
  });
}
