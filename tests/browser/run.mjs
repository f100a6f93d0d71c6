// node tests/browser/run.mjs --binary build/apps/amentum --pages web/dist [--pictures FOLDER]
import { mkdirSync } from 'node:fs';
import { argument, newStore, runProgram, runTests, serve } from '../http/program.mjs';
import { startBrowser } from './browser.mjs';
import { doingTests } from './doing.mjs';
import { everyPageTests } from './every_page.mjs';
import { shownIsHeldTests } from './shown_is_held.mjs';

const store = newStore();
for (const words of [['demo'], ['plan-block', '--athlete', 'Marisol Quay'], ['plan-block', '--athlete', 'Tuva Skagen']]) {
  const made = runProgram(store, ...words);
  if (made.status !== 0) throw new Error(made.stderr);
}
const pages = argument('pages', 'web/dist');
const pictures = argument('pictures', '');
if (pictures) mkdirSync(pictures, { recursive: true });
const world = { store, pages, pictures, browser: await startBrowser(), server: await serve(store, pages) };
shownIsHeldTests(world);
everyPageTests(world);
doingTests(world);
const failed = await runTests();
await world.browser.close();
await world.server.kill();
process.exit(failed ? 1 : 0);
