// An acknowledged set survives kill -9, and the same key sent again is the same set.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { argument, newStore, runProgram, serve, test } from './program.mjs';
import { get, post } from './requests.mjs';

const pages = argument('pages', 'web/dist');
const set = (n) => ({
  key: `http-set-${String(n).padStart(6, '0')}`,
  athlete: 'anders-tollefsen',
  date: '2026-05-29',
  exercise: 'hex_bar_deadlift_high',
  set_number: 1 + (n % 40),
  load_lb: 300,
  reps: 5,
  reps_in_reserve: 2,
});

async function keptLines(url) {
  const files = (await get(url, '/api/export_records')).body.files;
  return files.find((file) => file.kind === 'sets').text.match(/http-set-\d{6}/g) ?? [];
}
const keptKeys = async (url) => new Set(await keptLines(url));

export function durabilityTests(server) {
  test('200 sets sent at once, then all again: each kept once', async () => {
    const { url } = server();
    const first = await Promise.all(Array.from({ length: 200 }, (_, n) => post(url, '/api/log_set', set(n))));
    assert.ok(first.every((answer) => answer.status === 200 && answer.body.held_before === false));
    const again = await Promise.all(Array.from({ length: 200 }, (_, n) => post(url, '/api/log_set', set(n))));
    assert.ok(again.every((answer) => answer.status === 200 && answer.body.held_before === true));
    assert.equal((await keptLines(url)).length, 200);
    const other = await post(url, '/api/log_set', { ...set(0), reps: 4 });
    assert.equal(other.status, 422);
  });
  for (const atOnce of [1, 8])
    test(`kill -9 during 200 sets, ${atOnce} on the way at once, loses no acknowledged one`, async () => {
      const store = newStore();
      assert.equal(runProgram(store, 'demo').status, 0);
      let running = await serve(store, pages);
      const acknowledged = [];
      let next = 0;
      const send = async () => {
        while (next < 200) {
          const mine = set((next += 1));
          const answer = await post(running.url, '/api/log_set', mine).catch(() => null);
          if (!answer) return;
          if (answer.status === 200) acknowledged.push(mine.key);
          if (acknowledged.length === 60) setTimeout(() => running.kill('SIGKILL'), 3);
        }
      };
      await Promise.all(Array.from({ length: atOnce }, send));
      assert.ok(acknowledged.length >= 60 && acknowledged.length < 200, `killed in the middle, after ${acknowledged.length}`);
      running = await serve(store, pages);
      const kept = await keptKeys(running.url);
      assert.deepEqual(acknowledged.filter((key) => !kept.has(key)), []);
      const again = await Promise.all(Array.from({ length: 200 }, (_, n) => post(running.url, '/api/log_set', set(n + 1))));
      assert.ok(again.every((answer) => answer.status === 200));
      assert.equal((await keptLines(running.url)).length, 200, 'each once, whatever was sent again');
      await running.kill();
    });
  test('kill -9 while 60 force traces come in, two at once, loses no acknowledged one, nor a reading of it', async () => {
    const store = newStore();
    assert.equal(runProgram(store, 'demo').status, 0);
    let running = await serve(store, pages);
    const content = readFileSync(new URL('../../docs/guide/files/countermovement_jump.txt', import.meta.url)).toString('base64');
    const trace = (n) => ({ key: `http-trace-${n}`, file_name: `${n}.txt`, content, effort: 'countermovement_jump', athlete: 'anders-tollefsen', date: `2026-05-${String(1 + (n % 20)).padStart(2, '0')}` });
    const acknowledged = [];
    let next = 0;
    const send = async () => {
      while (next < 60) {
        const mine = trace((next += 1));
        const answer = await post(running.url, '/api/record_trace', mine).catch(() => null);
        if (!answer) return;
        assert.equal(answer.status, 200, JSON.stringify(answer.body));
        acknowledged.push(mine.key);
        if (acknowledged.length === 20) setTimeout(() => running.kill('SIGKILL'), 2);
      }
    };
    await Promise.all([send(), send()]);
    assert.ok(acknowledged.length >= 20 && acknowledged.length < 60, `killed in the middle, after ${acknowledged.length}`);
    running = await serve(store, pages);
    const kept = (await get(running.url, '/api/traces?athlete=anders-tollefsen')).body.groups.flatMap((group) => group.trials.map((trial) => trial.trace));
    assert.deepEqual(acknowledged.filter((key) => !kept.includes(key)), []);
    const readings = (await get(running.url, '/api/export_records')).body.files.find((file) => file.kind === 'test_results').text;
    for (const key of kept) assert.equal(readings.split(`force trace ${key}\r`).length, 3, `${key}: height and power, once each`);
    await running.kill();
  });
}
