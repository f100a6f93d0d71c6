// An arm's account over HTTP: late and corrected entries, days on travel, pain and whose clearance ends it.
// Rest days of the tables: the published guideline, 11 to 12 years: to 20 pitches 0 days, 51 to 65 three, 85 a day [UsaBaseballPitching].
import assert from 'node:assert/strict';
import { newStore, runProgram, serve, test } from './program.mjs';
import { get, post } from './requests.mjs';

const guideline = 'United States baseball guideline';

export function armTests() {
  let server;
  const ask = (path) => get(server.url, path).then(({ status, body }) => (assert.equal(status, 200, JSON.stringify(body)), body));
  const send = (name, body) => post(server.url, `/api/${name}`, body);
  const kept = (name, body) => send(name, body).then((answer) => (assert.equal(answer.status, 200, JSON.stringify(answer.body)), answer.body));
  const refused = (name, body) => send(name, body).then((answer) => (assert.ok(answer.status >= 400, JSON.stringify(answer.body)), answer.body.refusal));

  test('arm: a late entry and its correction say which answers they changed', async () => {
    const store = newStore();
    assert.equal(runProgram(store, 'demo').status, 0);
    server = await serve(store, 'web/dist');
    const { text } = (await ask('/api/export_records')).files.find((file) => file.kind === 'athletes');
    const header = text.split('\n')[0];
    const child = header.split(',').map((column) => ({ name: 'Pia Lund', birth_date: '2014-04-02', sex: 'female', throwing_hand: 'right', sport: 'baseball', role: 'pitcher', level: 'youth', kit: 'Saltgrass hall', guardian: 'Ada Lund' })[column] ?? '').join(',');
    assert.equal((await kept('import_records', { kind: 'athletes', text: `${header}\n${child}\n`, take: true })).taken, true);
    await kept('join_team', { athlete: 'Pia Lund', team: 'Net Loft twelves', organisation: guideline, date: '2026-01-01' });
    const arm = (day) => ask(`/api/check_arm?athlete=pia-lund&date=${day}`);
    assert.equal((await arm('2026-06-01')).most, 85);

    const late = await kept('record_throws', { athlete: 'Pia Lund', date: '2026-05-30', setting: 'game', count: 60, innings: '4.1' });
    const word = (reopened, date) => reopened.find((each) => each.date === date);
    assert.deepEqual(late.reopened.map((each) => each.date), ['2026-05-30', '2026-05-31', '2026-06-01', '2026-06-02']);
    assert.deepEqual(word(late.reopened, '2026-06-01'), { date: '2026-06-01', before: 'at most 85 pitches', now: 'none; next on 2026-06-03' });
    const today = await arm('2026-06-01');
    assert.deepEqual([today.may_pitch, today.most, today.next_day], ['no', 0, '2026-06-03']);
    assert.match(today.short_answer, /3 days of rest after 60 pitches on 2026-05-30/);

    const other = { athlete: 'Pia Lund', date: '2026-05-30', setting: 'game', count: 20, innings: '1.2' };
    assert.equal((await refused('record_throws', other)).field, 'date');
    assert.equal((await refused('record_throws', { ...other, corrected_by: 'Kim Osei', reason: 'typo' })).field, 'reason');
    const corrected = await kept('record_throws', { ...other, corrected_by: 'Kim Osei', reason: 'the scorer read the wrong line' });
    assert.equal(corrected.corrected, true);
    assert.deepEqual(word(corrected.reopened, '2026-06-01'), { date: '2026-06-01', before: 'none; next on 2026-06-03', now: 'at most 85 pitches' });
    assert.equal((await arm('2026-06-01')).most, 85);
  });
  test('arm: a stop of the young is nobody’s to answer, and a refusal keeps nothing', async () => {
    await kept('record_throws', { athlete: 'Pia Lund', date: '2026-05-31', setting: 'game', count: 60 });
    const refusal = await refused('answer_stop', { athlete: 'Pia Lund', code: 'rest_not_over', coach: 'Kim Osei', reason: 'the final is today' });
    assert.equal(refusal.field, 'code');
    assert.match(refusal.sentence, /Nobody can answer/);
    assert.match((await refused('record_throws', { athlete: 'Pia Lund', date: '2026-05-31', setting: 'none', count: 0 })).sentence, /cannot both stand/);
    const practice = { setting: 'catch_play', count: 30, lines: [{ athlete: 'Obi Castellane' }, { athlete: 'Pia Lund', count: 500 }] };
    assert.equal((await refused('record_practice', practice)).field, 'lines[1].count');
    const day = (await ask('/api/check_arm?athlete=obi-castellane&days=7')).ledger.at(-1);
    assert.deepEqual([day.date, day.known], ['2026-06-01', 'unknown']);
  });
  test('arm: on travel the day is the day of the place', async () => {
    const tomorrow = { athlete: 'Pia Lund', date: '2026-06-02', setting: 'catch_play', count: 10 };
    assert.equal((await refused('record_throws', tomorrow)).field, 'date');
    assert.equal((await refused('record_throws', { ...tomorrow, time_zone: 'Atlantis/Port' })).field, 'time_zone');
    // Noon in Greenwich on the 1st is 2 a.m. of the 2nd at UTC+14, and still the 1st at UTC+9.
    assert.equal((await refused('record_throws', { ...tomorrow, time_zone: 'Asia/Tokyo' })).field, 'date');
    assert.equal((await kept('record_throws', { ...tomorrow, time_zone: 'Pacific/Kiritimati' })).held_before, false);
  });
  test('arm: pain stops throws and plans until a named adult records who cleared it', async () => {
    const pain = await kept('record_pain', { athlete: 'Obi Castellane', region: 'elbow', words: 'inside of the elbow, last inning', noted_by: 'Kim Osei' });
    assert.equal(pain.pain.open, true);
    const stopped = await ask('/api/check_arm?athlete=obi-castellane');
    assert.equal(stopped.may_pitch, 'no');
    assert.equal(stopped.findings.find((each) => each.code === 'open_pain').may_answer, 'nobody');
    assert.equal((await refused('plan_ramp', { athlete: 'Obi Castellane', target_week: 120 })).field, 'athlete');
    assert.match((await refused('answer_stop', { athlete: 'Obi Castellane', code: 'open_pain', coach: 'Kim Osei', reason: 'he says it is fine' })).sentence, /Nobody can answer/);
    const block = await kept('plan_block', { athlete: 'Obi Castellane', start: '2026-06-08' });
    const throws = block.sessions.flatMap((session) => session.lines).filter((line) => /throw|press|pull-up|row/i.test(line.name));
    assert.deepEqual(throws.map((line) => line.name), []);
    const clear = { athlete: 'Obi Castellane', number: pain.pain.number, cleared_by: 'Dr. Ada Fenwick, sports physician', recorded_by: 'Kim Osei' };
    assert.equal((await refused('record_clearance', { ...clear, cleared_by: 'Obi Castellane' })).field, 'cleared_by');
    assert.equal((await refused('record_clearance', { ...clear, number: 99 })).field, 'number');
    const again = { athlete: 'Obi Castellane', region: 'elbow', words: 'inside of the elbow, last inning', noted_by: 'Kim Osei' };
    assert.deepEqual([(await kept('record_pain', again)).held_before, (await kept('record_pain', again)).pain.number], [true, pain.pain.number]);
    assert.match((await kept('record_clearance', clear)).pain.clearance, /Dr\. Ada Fenwick/);
    assert.notEqual((await ask('/api/check_arm?athlete=obi-castellane')).findings.some((each) => each.code === 'open_pain'), true);
    const back = await kept('record_pain', again); // the same words after the clearance: it came back, and stops again
    assert.deepEqual([back.held_before, back.pain.open, back.pain.number], [false, true, pain.pain.number + 1]);
    assert.equal((await ask('/api/check_arm?athlete=obi-castellane')).may_pitch, 'no');
    await server.kill();
  });
}
