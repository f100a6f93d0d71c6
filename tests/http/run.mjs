// node tests/http/run.mjs --binary build/apps/amentum --pages web/dist
import { argument, newStore, runProgram, runTests, serve } from './program.mjs';
import { durabilityTests } from './durability.mjs';
import { everyRouteTests } from './every_route.mjs';
import { originAndLimitsTests } from './origin_and_limits.mjs';
import { requestTests } from './requests.mjs';
import { sameDocumentTests } from './same_document.mjs';

const store = newStore();
const made = runProgram(store, 'demo');
if (made.status !== 0) throw new Error(made.stderr);
const running = await serve(store, argument('pages', 'web/dist'));
sameDocumentTests(() => running, store);
requestTests(() => running);
everyRouteTests(() => running);
originAndLimitsTests(() => running);
durabilityTests(() => running);
const failed = await runTests();
await running.kill();
process.exit(failed ? 1 : 0);
