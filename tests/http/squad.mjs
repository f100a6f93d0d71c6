// A squad is planned beside everything else: a second is refused, stopping keeps what is done, sets are logged meanwhile.
import assert from 'node:assert/strict';
import { argument, newStore, runProgram, serve, test } from './program.mjs';
import { get, post } from './requests.mjs';

const pages = argument('pages', 'web/dist');
const start = '2026-06-08';
const ask = (url, fields) => post(url, '/api/plan_squad', { wait: false, ...fields });
const lineOf = (body, name) => body.lines.find((each) => each.athlete === name);

async function ended(url) {
  for (;;) {
    const seen = (await ask(url, { step: 'look' })).body;
    if (seen.state !== 'running') return seen;
    await new Promise((done) => setTimeout(done, 100));
  }
}

export function squadTests() {
  test('a squad is begun once, stopped with what is done kept, and planned to its end; one who cannot be planned stops nobody', async () => {
    const store = newStore();
    assert.equal(runProgram(store, 'demo').status, 0);
    const running = await serve(store, pages);
    const { url } = running;
    const roster = (await get(url, '/api/roster')).body.throwers;
    // One thrower without a free day in all four weeks.
    const busy = roster[3].athlete;
    const text = `athlete,date,last_date,kind\n"${roster[3].name}",2026-06-08,2026-07-05,off\n`;
    const taken = await post(url, '/api/import_records', { kind: 'calendar', text, take: true });
    assert.equal(taken.body.taken, true, JSON.stringify(taken.body));

    assert.equal((await ask(url, { step: 'look' })).body.state, 'none');
    const begun = await ask(url, { step: 'begin', start, effort: 'thorough' });
    assert.equal(begun.status, 200, JSON.stringify(begun.body));
    assert.equal(begun.body.state, 'running');
    assert.equal(begun.body.lines.length, roster.length);
    const second = await ask(url, { step: 'begin', start });
    assert.equal(second.body.refusal?.name, 'already_held', JSON.stringify(second.body));

    // The gym goes on: a set is kept while the squad is planned.
    const set = await post(url, '/api/log_set', { key: 'squad-test-1', athlete: roster[0].athlete, date: '2026-06-01', exercise: 'side_plank', set_number: 1, reps: 10 });
    assert.equal(set.status, 200, JSON.stringify(set.body));
    await ask(url, { step: 'stop' });
    const stopped = await ended(url);
    assert.equal(stopped.state, 'stopped');
    assert.ok(stopped.waiting > 0, JSON.stringify(stopped.words));
    for (const line of stopped.lines.filter((each) => each.outcome === 'planned'))
      assert.equal((await get(url, `/api/block?block=${line.block}`)).status, 200, line.name);
    for (const line of stopped.lines.filter((each) => each.outcome === 'stopped'))
      assert.equal((await get(url, `/api/block?block=${line.athlete}-${start}`)).status, 404, `${line.name} was not planned`);

    await ask(url, { step: 'begin', start });
    const done = await ended(url);
    assert.deepEqual([done.state, done.share, done.waiting, done.planned + done.refused + done.left], ['done', 1, 0, roster.length]);
    assert.equal(lineOf(done, busy).outcome, 'refused');
    assert.match(lineOf(done, busy).words, /free/);
    assert.ok(done.planned >= roster.length - 3, done.words);

    // Again: the same blocks, whatever the threads. A begun one is left.
    const other = lineOf(done, roster[0].athlete).outcome === 'planned' ? roster[0].athlete : roster[1].athlete;
    const block = `${other}-${start}`;
    const before = (await get(url, `/api/block?block=${block}`)).body;
    await post(url, '/api/log_set', { key: 'squad-test-2', athlete: other, date: '2026-06-01', exercise: 'side_plank', set_number: 2, reps: 10, block });
    await ask(url, { step: 'begin', start });
    const again = await ended(url);
    assert.equal(lineOf(again, other).outcome, 'left');
    const lines = (body) => body.sessions.map((session) => session.lines.map((line) => [line.exercise, line.sets, line.load_words]));
    assert.deepEqual(lines((await get(url, `/api/block?block=${block}`)).body), lines(before));

    // A coach changes a block before its turn comes: the change stands, and the row says so.
    const late = again.lines.filter((each) => each.outcome === 'planned').at(-1).athlete;
    const { exercise } = (await get(url, `/api/block?block=${late}-${start}`)).body.sessions[0].lines.at(-1);
    await ask(url, { step: 'begin', start });
    const word = await post(url, '/api/adjust_block', { block: `${late}-${start}`, step: 'leave_out', exercise });
    assert.equal(word.status, 200, JSON.stringify(word.body));
    const third = await ended(url);
    assert.deepEqual([lineOf(third, late).outcome, /changed by hand/.test(lineOf(third, late).words)], ['left', true], JSON.stringify(lineOf(third, late)));
    const stands = (await get(url, `/api/block?block=${late}-${start}`)).body;
    assert.equal(stands.own_words.length, 1);
    assert.deepEqual(lines(stands), lines(word.body.block));
    await running.kill();
  });
}
