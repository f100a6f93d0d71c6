// Starts and stops the real program on a store of its own, for the http and browser tests.
import { spawn, spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const today = '2026-06-01';

export function argument(name, otherwise) {
  const place = process.argv.indexOf(`--${name}`);
  return place > 0 ? process.argv[place + 1] : otherwise;
}

export const binary = argument('binary', 'build/apps/amentum');

export function newStore() {
  return join(mkdtempSync(join(tmpdir(), 'amentum-')), 'test.store');
}

// A store that no program has open, copied: what takes long to make is made once for several tests.
export function copyOfStore(store) {
  const copy = newStore();
  for (const part of ['', '-wal', '-shm']) if (existsSync(store + part)) copyFileSync(store + part, copy + part);
  return copy;
}

// The invented hall with its roster fitted, made once for all who ask.
let fitted;
export function newHall() {
  if (!fitted) {
    const store = newStore();
    for (const word of ['demo', 'fit-roster']) {
      const made = runProgram(store, word);
      if (made.status !== 0) throw new Error(made.stderr);
    }
    fitted = store;
  }
  return copyOfStore(fitted);
}

export function runProgram(store, ...words) {
  return spawnSync(binary, ['--store', store, '--today', today, ...words], { encoding: 'utf8' });
}

// Resolves with {url, port, kill} once the program says where it serves.
export function serve(store, pages, port = 0) {
  const child = spawn(binary, ['--store', store, '--today', today, 'serve', '--port', String(port), '--pages', pages]);
  return new Promise((resolve, reject) => {
    let said = '';
    child.stderr.on('data', (text) => (said += text));
    child.stdout.on('data', (text) => {
      said += text;
      const found = said.match(/Serving on (http:\/\/127\.0\.0\.1:(\d+))/);
      if (!found) return;
      const gone = new Promise((done) => child.once('exit', done));
      const kill = (signal = 'SIGTERM') => (child.kill(signal), gone);
      resolve({ url: found[1], port: Number(found[2]), kill });
    });
    child.once('exit', (code) => reject(new Error(`the program ended with ${code}: ${said}`)));
  });
}

// The tests of a file, one after another; ends the process with the line CI reads.
const tests = [];
export function test(name, body) {
  tests.push({ name, body });
}
// `tries`: 2 where a clock outside the project decides (a browser that draws late on a busy machine); what failed at first is
// printed all the same.
export async function runTests({ tries = 1 } = {}) {
  let failed = 0;
  for (const { name, body } of tests) {
    const started = Date.now();
    for (let left = tries - 1; ; --left) {
      try {
        await body();
        console.log(`ok      ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)`);
      } catch (fault) {
        console.log(`${left > 0 ? 'ONCE MORE' : 'FAILED '} ${name}\n        ${fault.stack ?? fault}`);
        if (left > 0) continue;
        failed += 1;
      }
      break;
    }
  }
  console.log(`${tests.length - failed} passed, ${failed} failed`);
  return failed;
}
