// node tests/browser/run.mjs --binary build/apps/amentum --pages web/dist [--pictures FOLDER]
import { mkdirSync } from 'node:fs';
import { argument, newStore, runProgram, runTests, serve } from '../http/program.mjs';
import { addressTests } from './addresses.mjs';
import { athleteRecordTests } from './athlete_record.mjs';
import { bodyTests } from './body.mjs';
import { startBrowser } from './browser.mjs';
import { everyPageTests } from './every_page.mjs';
import { importRecordsTests } from './import_records.mjs';
import { keyboardTests } from './keyboard.mjs';
import { linesTests } from './lines.mjs';
import { loadBarTests } from './load_bar.mjs';
import { offlineTests } from './offline.mjs';
import { planBlockTests } from './plan_block.mjs';
import { printTests } from './print.mjs';
import { rangesTests } from './ranges.mjs';
import { recordTraceTests } from './record_traces.mjs';
import { shownIsHeldTests } from './shown_is_held.mjs';
import { solveSetupTests } from './solve_setup.mjs';
import { testDayTests } from './test_day.mjs';
import { traceTests } from './traces.mjs';

const store = newStore();
for (const words of [['demo'], ['plan-block', '--athlete', 'Marisol Quay'], ['plan-block', '--athlete', 'Tuva Skagen']]) {
  const made = runProgram(store, ...words);
  if (made.status !== 0) throw new Error(made.stderr);
}
const pages = argument('pages', 'web/dist');
const pictures = argument('pictures', '');
if (pictures) mkdirSync(pictures, { recursive: true });
const world = { store, pages, pictures, browser: await startBrowser(), server: await serve(store, pages) };
for (const tests of [shownIsHeldTests, everyPageTests, printTests, loadBarTests, importRecordsTests, testDayTests, planBlockTests,
                     athleteRecordTests, addressTests, keyboardTests, recordTraceTests, traceTests, linesTests, rangesTests,
                     solveSetupTests, bodyTests, offlineTests])
  tests(world);
const failed = await runTests();
await world.browser.close();
await world.server.kill();
process.exit(failed ? 1 : 0);
