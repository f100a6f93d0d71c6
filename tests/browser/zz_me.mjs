// node tests/browser/run.mjs --binary build/apps/amentum --pages web/dist [--pictures FOLDER]
import { mkdirSync } from 'node:fs';
import { argument, newHall, runProgram, runTests, serve } from '../http/program.mjs';
import { addressTests } from './addresses.mjs';
import { athleteRecordTests } from './athlete_record.mjs';
import { bodyTests } from './body.mjs';
import { startBrowser } from './browser.mjs';
import { changeBlockTests } from './change_block.mjs';
import { checkCalibrationTests } from './check_calibration.mjs';
import { checkPlanTests } from './check_plan.mjs';
import { compareBlocksTests } from './compare_blocks.mjs';
import { everyPageTests } from './every_page.mjs';
import { explainVelocityTests } from './explain_velocity.mjs';
import { growthTests } from './growth.mjs';
import { importBlockTests } from './import_block.mjs';
import { importRecordsTests } from './import_records.mjs';
import { judgeBlockTests } from './judge_block.mjs';
import { keyboardTests } from './keyboard.mjs';
import { kitTests } from './kit.mjs';
import { linesTests } from './lines.mjs';
import { loadBarTests } from './load_bar.mjs';
import { loadRacksTests } from './load_racks.mjs';
import { mayPitchTests } from './may_pitch.mjs';
import { nextSessionTests } from './next_session.mjs';
import { offlineTests } from './offline.mjs';
import { pitchRulesTests } from './pitch_rules.mjs';
import { planBlockTests } from './plan_block.mjs';
import { planRampTests } from './plan_ramp.mjs';
import { planSquadTests } from './plan_squad.mjs';
import { printTests } from './print.mjs';
import { priorsTests } from './priors.mjs';
import { rangesTests } from './ranges.mjs';
import { recordTraceTests } from './record_traces.mjs';
import { recordThrowsTests } from './record_throws.mjs';
import { retargetBlockTests } from './retarget_block.mjs';
import { shownIsHeldTests } from './shown_is_held.mjs';
import { solveSetupTests } from './solve_setup.mjs';
import { stopAndReferTests } from './stop_and_refer.mjs';
import { testDayTests } from './test_day.mjs';
import { traceTests } from './traces.mjs';

const store = newHall(); // a copy: the tests with a hall of their own take more copies of the same
for (const name of ['Marisol Quay', 'Tuva Skagen']) {
  const made = runProgram(store, 'plan-block', '--athlete', name);
  if (made.status !== 0) throw new Error(made.stderr);
}
const pages = argument('pages', 'web/dist');
const pictures = argument('pictures', '');
if (pictures) mkdirSync(pictures, { recursive: true });
const world = { store, pages, pictures, browser: await startBrowser(), server: await serve(store, pages) };
for (const tests of [nextSessionTests])
  tests(world);
const failed = await runTests({ tries: 1 });
await world.browser.close();
await world.server.kill();
process.exit(failed ? 1 : 0);
