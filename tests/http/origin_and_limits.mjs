// What a browser of another site, a flood of bytes or a neighbour on the network may not do.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from './program.mjs';
import { get, post } from './requests.mjs';

const weighed = (mass) => ({ athlete: 'anders-tollefsen', date: '2026-05-28', test: 'body_mass', trials: [{ body_mass_lb: mass }], keep: true });

export function originAndLimitsTests(server) {
  test('a page of another site may not write; the program’s own page may', async () => {
    const { url, port } = server();
    for (const Origin of ['http://elsewhere.example', 'null', `http://127.0.0.1:${port + 1}`, `http://127.0.0.1.elsewhere.example:${port}`])
      assert.equal((await post(url, '/api/record_test', weighed(205), { Origin })).status, 403, Origin);
    const held = (await get(url, '/api/test_day?date=2026-05-28')).body.squad.find((each) => each.athlete === 'anders-tollefsen').done;
    assert.ok(!held.includes('body_mass'), 'nothing was kept');
    assert.equal((await post(url, '/api/record_test', weighed(205), { Origin: url })).status, 200);
  });
  test('9 MB are refused or cut off, and the program goes on answering', async () => {
    const { url } = server();
    for (const path of ['/api/import_records', '/api/log_set']) {
      const large = await post(url, path, JSON.stringify({ kind: 'throws', text: 'x'.repeat(9 * 1024 * 1024) })).catch(() => 'closed');
      assert.ok(large === 'closed' || large.status === 413 || large.status === 422, `${path} ${large.status}`);
      assert.equal((await get(url, '/api/roster')).status, 200);
    }
  });
  test('a recording of 20 MB is taken by the operations that look at files, and 70 MB are not', async () => {
    const { url } = server();
    const sent = (megabytes) => post(url, '/api/measure_trace', JSON.stringify({ file_name: 'long.txt', effort: 'countermovement_jump', content: 'eHh4'.repeat(megabytes * 262144) })).catch(() => 'closed');
    const long = await sent(20);
    assert.equal(long.status, 422);
    assert.equal(long.body.refusal.name, 'unreadable_file', JSON.stringify(long.body).slice(0, 300));
    const longer = await sent(70);
    assert.ok(longer === 'closed' || longer.status === 413, `${longer.status}`);
    assert.equal((await get(url, '/api/roster')).status, 200);
  });
  test('the port is open on 127.0.0.1 and nowhere else, by the system’s own list', async () => {
    const hex = server().port.toString(16).toUpperCase().padStart(4, '0');
    const listening = ['/proc/net/tcp', '/proc/net/tcp6'].flatMap((file) =>
      readFileSync(file, 'utf8').split('\n').map((line) => line.trim().split(/\s+/)).filter((part) => part[1]?.endsWith(`:${hex}`) && part[3] === '0A'),
    );
    assert.deepEqual(listening.map((part) => part[1]), [`0100007F:${hex}`]);
  });
}
