// A coach's own block over HTTP: written out and brought in again it is the same block, of every thrower tried; refused whole
// with every fault named; kept only when told to and when no guard rail stops it.
import assert from 'node:assert/strict';
import { newHall, runProgram, serve, test } from './program.mjs';
import { get, post } from './requests.mjs';

const head = 'week,session,weekday,exercise,sets,reps,load_lb,reserve\n';

async function hall() {
  const store = newHall();
  return { store, server: await serve(store, '') };
}

export function importBlockTests() {
  test('a planned block written out and brought in again is the same, session by session, in both units of loads', async () => {
    const { server } = await hall();
    for (const athlete of ['Marisol Quay', 'Tuva Skagen', 'Tomas Verlaine']) {
      const { body: planned } = await post(server.url, '/api/plan_block', { athlete, start: '2026-06-08', weeks: 5 });
      const { body: written } = await get(server.url, `/api/export_block?block=${planned.block}`);
      const given = { athlete, text: written.files[0].text, start: written.start, minutes: written.minutes, kit: written.kit };
      const { body: shown } = await post(server.url, '/api/import_block', given);
      assert.deepEqual(shown.problems, [], athlete);
      assert.deepEqual(shown.block.sessions, planned.sessions, athlete);
      assert.match(shown.words, /already held as it is/);
      assert.equal(shown.kept, false);
      const { body: kept } = await post(server.url, '/api/import_block', { ...given, keep: true });
      assert.equal(kept.kept, true);
      assert.deepEqual((await get(server.url, `/api/block?block=${planned.block}`)).body.sessions, planned.sessions);
    }
    await server.kill();
  });
  test('every fault of a file is listed by line and column, and a file with one keeps nothing', async () => {
    const { server } = await hall();
    const text = `${head}1,1,monday,Hex bar deadlift,4,5,185,2\n1,1,monday,Goblet squat,3,eight,50,3\n0,1,monday,box_jump,3,3,,\n1,2,noday,box_jump,300,3,,\n`;
    const { body } = await post(server.url, '/api/import_block', { athlete: 'Marisol Quay', text, keep: true });
    assert.equal(body.kept, false);
    assert.equal(body.block, null);
    assert.deepEqual(body.problems.map((each) => each.field), ['line 2, exercise', 'line 3, exercise', 'line 3, reps', 'line 4, week', 'line 5, weekday', 'line 5, sets']);
    for (const problem of body.problems) assert.ok(problem.sentence.length > 25, problem.sentence);
    assert.match(body.problems[0].sentence, /Did you mean "hex_bar_deadlift/);
    assert.equal((await get(server.url, '/api/block?block=marisol-quay-2026-06-08')).status, 404);
    await server.kill();
  });
  test('what the guard rails stop is shown and not kept; what they let through is, and gives way until a set is logged', async () => {
    const { server } = await hall();
    const ask = (text, more = {}) => post(server.url, '/api/import_block', { athlete: 'Marisol Quay', text, start: '2026-06-08', ...more });
    const tooLong = (await ask(`${head}1,1,monday,hex_bar_deadlift_high,30,5,185,2\n`, { keep: true })).body;
    assert.equal(tooLong.kept, false);
    assert.ok(tooLong.block.findings.some((each) => each.severity === 'stops' && /minutes/.test(each.sentence)));
    const good = `${head}1,1,monday,hex_bar_deadlift_high,3,5,185,2\n2,1,monday,hex_bar_deadlift_high,3,5,185,2\n3,1,monday,hex_bar_deadlift_high,3,5,195,2\n4,1,monday,hex_bar_deadlift_high,2,5,195,2\n`;
    const kept = (await ask(good, { keep: true })).body;
    assert.equal(kept.kept, true, kept.words);
    assert.equal(kept.block.block, 'marisol-quay-2026-06-08');
    assert.match((await ask(good.replace('2,5,195', '2,4,195'), { keep: true })).body.words, /in place of the block held/);
    const set = { key: 'import-block-set-1', athlete: 'Marisol Quay', date: '2026-06-01', exercise: 'hex_bar_deadlift_high', set_number: 1, load_lb: 185, reps: 5, block: 'marisol-quay-2026-06-08' };
    assert.equal((await post(server.url, '/api/log_set', set)).status, 200);
    const refused = await ask(good, { keep: true });
    assert.equal(refused.status, 422);
    assert.equal(refused.body.refusal.name, 'already_held');
    await server.kill();
  });
  test('the command reads the file from the disk, and standard input, and says the same', async () => {
    const { store, server } = await hall();
    await server.kill();
    const text = 'week,exercise,sets,reps\n1,no such lift at all,3,5\n';
    const said = runProgram(store, '--json', 'import-block', '--athlete', 'Marisol Quay', '--text', text);
    assert.equal(JSON.parse(said.stdout).problems[0].field, 'line 2, exercise');
    assert.equal(runProgram(store, 'import-block', '--athlete', 'Marisol Quay', '--file', '/nowhere/at/all.csv').status, 1);
    assert.equal(runProgram(store, 'import-block', '--athlete', 'Marisol Quay', '--text', text, '--minutes', '500').status, 1);
  });
}
