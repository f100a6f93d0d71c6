// Every page, at three widths: no script error, no sideways scroll, no accessibility violation, targets a hand can hit.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const everyPage = ['roster', 'check_staff', 'check_arm/jonah-pellworm', 'check_arm/bastian-greyling/2026-06-04', 'explain_velocity', 'check_calibration', 'priors', 'athlete_record/marisol-quay', 'athlete_record/finn-abernarrow', 'plan_block', 'plan_squad', 'plan_block/marisol-quay',
                          'plan_block/tuva-skagen', 'plan_block/luca-thistlewood', 'test_day', 'load_bar', 'load_racks', 'load_racks/marisol-quay', 'kit', 'kit/tuva-s-garage', 'import_records', 'import_block', 'import_block/marisol-quay', 'plan_next_session/marisol-quay', 'plan_next_session/finn-abernarrow', 'method',
                          'method/one_rep_max', 'record_trace', 'inspect_c3d', 'traces/tomas-verlaine',
                          'trace/demo-tomas-verlaine-cmj-2026-05-06-1', 'trace',
                          'ball_mass_line/greta-holloway', 'ball_mass_line/marisol-quay', 'load_velocity/greta-holloway', 'joint_ranges',
                          'joint_ranges/amara-tidewell', 'sides/amara-tidewell', 'sides/marisol-quay', 'estimate_error',
                          'estimate_error/grip_force', 'solve_setup', 'solve_setup/marisol-quay', 'describe_body/marisol-quay',
                          'measure_lead_leg/marisol-quay', 'measure_ball_throw/marisol-quay', 'judge_block/tomas-verlaine', 'retarget_block', 'retarget_block/marisol-quay', 'next_test/marisol-quay', 'next_test/finn-abernarrow', 'stop_and_refer', 'stop_and_refer/finn-abernarrow', 'record_throws/marisol-quay', 'record_throws/valborg-lindhag', 'record_practice', 'pitch_rules', 'growth', 'growth/caleb-underhaugh', 'plan_ramp/marisol-quay',
                          'plan_ramp/bastian-greyling', 'check_plan', 'check_plan/jonah-pellworm', 'no_such_page'];

// Buttons and fields lower than 44 px; a checkbox is hit by its label. [WCAG 2.2, 2.5.8 asks for 24, 2.5.5 for 44]
const tooSmall = () =>
  [...document.querySelectorAll('main button, main input:not([type=checkbox]), main select, main summary')]
    .filter((each) => each.offsetParent !== null && each.getBoundingClientRect().height < 43.5)
    .map((each) => each.outerHTML.slice(0, 90));

// Each page is loaded once, and then given each width, and paper: what depends on the width must follow it.
async function lookAt(world, name) {
  const page = await openPage(world.browser, `${world.server.url}/#/${name}`);
  for (const [device, width] of Object.entries(widths)) {
    await page.setViewportSize({ width, height: 900 });
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
    const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    assert.ok(beyond <= 0, `${name} scrolls sideways by ${beyond} px at ${width}`);
    if (device !== 'tablet') assert.deepEqual(await violations(page), [], `${name} at ${width}`);
    assert.deepEqual(await page.evaluate(tooSmall), [], `${name} at ${width}`);
    await picture(page, world.pictures, `${name.replaceAll('/', '-')}-${device}`);
  }
  await page.setViewportSize({ width: widths.desktop, height: 900 });
  await page.emulateMedia({ media: 'print' });
  assert.deepEqual(await violations(page), [], `${name} in print`);
  assert.deepEqual(page.faults, [], name);
  await page.close();
}

export function everyPageTests(world) {
  test('every page on a desktop, a tablet, a phone and in print', async () => {
    const left = [...everyPage];
    const oneAfterAnother = async () => {
      while (left.length) await lookAt(world, left.shift());
    };
    await Promise.all([oneAfterAnother(), oneAfterAnother()]); // two at a time: axe keeps one core busy
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
