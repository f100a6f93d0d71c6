// Bad and good requests: every refusal names the field and says what is allowed; nothing is half-saved.
import assert from 'node:assert/strict';
import { connect } from 'node:net';
import { test } from './program.mjs';

export const get = (url, path) => fetch(url + path).then(async (r) => ({ status: r.status, body: await r.json() }));
export const post = (url, path, body, headers = {}) =>
  fetch(url + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  }).then(async (r) => ({ status: r.status, body: await r.json().catch(() => null) }));

// fetch would tidy "/../" away, so the bytes are written by hand.
function rawStatus(port, target) {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(`GET ${target} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`));
    let text = '';
    socket.on('data', (bytes) => (text += bytes));
    socket.on('end', () => resolve(Number(text.split(' ')[1])));
    socket.on('error', reject);
  });
}

const velocity = (athlete, mph, more = {}) => ({
  athlete,
  date: '2026-05-30',
  test: 'throwing_velocity',
  trials: [{ speed_mph: mph }, { speed_mph: mph }],
  device: 'radar 1',
  place_measured: 'out_of_hand',
  ...more,
});

export function requestTests(server) {
  const refusedWith = (answer, status, field) => {
    assert.equal(answer.status, status, JSON.stringify(answer.body));
    const { refusal } = answer.body;
    assert.ok(refusal.sentence.length > 20, 'a sentence');
    if (field) assert.match(refusal.field, field);
    return refusal;
  };

  test('every route that reads answers, or refuses with a sentence', async () => {
    const { url } = server();
    const document = (await get(url, '/api/openapi.json')).body;
    assert.ok(Object.keys(document.paths).length >= 17);
    for (const [path, verbs] of Object.entries(document.paths)) {
      if (!verbs.get) continue;
      const answer = await get(url, path);
      assert.ok([200, 422].includes(answer.status), `${path} ${answer.status}`);
      if (answer.status === 422) assert.ok(answer.body.refusal.sentence);
    }
  });
  test('an unknown field is refused and the nearest offered', async () => {
    const refusal = refusedWith(await get(server().url, '/api/find_limiters?atlete=marisol-quay'), 422, /atlete/);
    assert.match(refusal.sentence, /athlete/);
  });
  test('a missing field is named', async () => {
    refusedWith(await get(server().url, '/api/find_limiters'), 422, /athlete/);
  });
  test('an unknown name is 404 with the nearest name', async () => {
    const refusal = refusedWith(await get(server().url, '/api/find_limiters?athlete=Marisol%20Quai'), 404, /athlete/);
    assert.match(refusal.sentence, /Marisol Quay/);
  });
  test('an unknown operation is 404 with the nearest', async () => {
    assert.match(refusedWith(await get(server().url, '/api/find_limiter'), 404).sentence, /find_limiters/);
  });
  test('the wrong verb is 405', async () => {
    refusedWith(await post(server().url, '/api/roster', {}), 405);
  });
  test('a body that is not JSON or of the wrong type is refused', async () => {
    const { url } = server();
    refusedWith(await post(url, '/api/log_set', '{not json'), 422);
    refusedWith(await post(url, '/api/log_set', []), 422);
    refusedWith(await post(url, '/api/record_test', velocity('marisol-quay', 'fast')), 422, /trials\.0\.speed_mph/);
  });
  test('no path leads out of the pages folder', async () => {
    const { port } = server();
    for (const target of ['/../CMakeLists.txt', '/%2e%2e/CMakeLists.txt', '/assets/../../README.md', '//etc/passwd', '/../../../../etc/passwd'])
      assert.equal(await rawStatus(port, target), 404, target);
  });
  test('impossible numbers are refused in words a coach understands', async () => {
    const { url } = server();
    const squat = { athlete: 'anders-tollefsen', date: '2026-05-30', test: 'split_squat_max', side: 'left' };
    refusedWith(await post(url, '/api/record_test', { ...squat, trials: [{ load_lb: 900, reps: 3 }] }), 422);
    refusedWith(await post(url, '/api/record_test', { ...squat, trials: [{ load_lb: 185, reps: 0 }] }), 422, /reps/);
    refusedWith(await post(url, '/api/record_test', { ...squat, trials: [{ load_lb: 185, load_kg: 84, reps: 3 }] }), 422, /load/);
    refusedWith(await post(url, '/api/record_test', velocity('anders-tollefsen', 140)), 422);
    refusedWith(await post(url, '/api/record_test', velocity('anders-tollefsen', 80, { date: '2027-01-01' })), 422, /date/);
    const text = 'name,birth_date,sex,throwing_hand,sport,role,level,kit\nNew One,2031-01-01,male,right,baseball,pitcher,college,Saltgrass hall\n';
    const taken = (await post(url, '/api/import_records', { kind: 'athletes', text, take: true })).body;
    assert.equal(taken.taken, false);
    assert.match(taken.lines[0].refusal.field, /line 2, birth_date/);
  });
  test('a test far from expected is asked about, and kept only when told to', async () => {
    const { url } = server();
    const asked = (await post(url, '/api/record_test', velocity('anders-tollefsen', 93))).body;
    assert.equal(asked.saved, false);
    assert.match(asked.question, /Keep it\?/);
    assert.equal((await post(url, '/api/record_test', velocity('anders-tollefsen', 93, { keep: true }))).body.saved, true);
    assert.equal((await post(url, '/api/record_test', velocity('anders-tollefsen', 93))).body.held_before, true);
    refusedWith(await post(url, '/api/record_test', velocity('anders-tollefsen', 92)), 422);
  });
}
