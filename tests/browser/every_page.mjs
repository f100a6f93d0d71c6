// Every page, at three widths: no script error, no sideways scroll, no accessibility violation, targets a hand can hit.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

export const everyPage = ['roster', 'explain_velocity', 'athlete_record/marisol-quay', 'athlete_record/finn-abernarrow', 'plan_block', 'plan_block/marisol-quay',
                          'plan_block/tuva-skagen', 'plan_block/luca-thistlewood', 'test_day', 'load_bar', 'import_records', 'method',
                          'method/one_rep_max', 'record_trace', 'inspect_c3d', 'traces/tomas-verlaine',
                          'trace/demo-tomas-verlaine-cmj-2026-05-06-1', 'trace',
                          'ball_mass_line/greta-holloway', 'ball_mass_line/marisol-quay', 'load_velocity/greta-holloway', 'joint_ranges',
                          'joint_ranges/amara-tidewell', 'sides/amara-tidewell', 'sides/marisol-quay', 'estimate_error',
                          'estimate_error/grip_force', 'solve_setup', 'solve_setup/marisol-quay', 'describe_body/marisol-quay',
                          'measure_lead_leg/marisol-quay', 'measure_ball_throw/marisol-quay', 'no_such_page'];

// Buttons and fields lower than 44 px; a checkbox is hit by its label. [WCAG 2.2, 2.5.8 asks for 24, 2.5.5 for 44]
const tooSmall = () =>
  [...document.querySelectorAll('main button, main input:not([type=checkbox]), main select, main summary')]
    .filter((each) => each.offsetParent !== null && each.getBoundingClientRect().height < 43.5)
    .map((each) => each.outerHTML.slice(0, 90));

export function everyPageTests(world) {
  for (const [device, width] of Object.entries(widths))
    test(`every page on a ${device}`, async () => {
      for (const name of everyPage) {
        const page = await openPage(world.browser, `${world.server.url}/#/${name}`, width);
        const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        assert.ok(beyond <= 0, `${name} scrolls sideways by ${beyond} px at ${width}`);
        assert.deepEqual(await violations(page), [], `${name} at ${width}`);
        assert.deepEqual(await page.evaluate(tooSmall), [], `${name} at ${width}`);
        assert.deepEqual(page.faults, [], name);
        await picture(page, world.pictures, `${name.replaceAll('/', '-')}-${device}`);
        await page.close();
      }
    });
  test('the form to log a set, open, fits a phone and has no violation', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/plan_block/marisol-quay`, widths.phone);
    await page.getByRole('button', { name: /^Log a set, Hex-bar deadlift/ }).first().click();
    await page.getByLabel('Done on').waitFor();
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    assert.deepEqual(await violations(page), []);
    assert.deepEqual(await page.evaluate(tooSmall), []);
    await picture(page, world.pictures, 'log-a-set-phone');
    await page.close();
  });
}
