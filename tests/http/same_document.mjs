// The terminal's --json and the route give the same document, for an answer and for a refusal.
import assert from 'node:assert/strict';
import { runProgram, test } from './program.mjs';
import { get } from './requests.mjs';

export function sameDocumentTests(server, store) {
  const pairs = [
    [['roster'], '/api/roster'],
    [['find-limiters', 'Marisol Quay'], '/api/find_limiters?athlete=Marisol%20Quay'],
    [['judge-change', '--athlete', 'Obi Castellane', '--test', 'body_mass'], '/api/judge_change?athlete=obi-castellane&test=body_mass'],
    [['load-bar', '--target-lb', '227'], '/api/load_bar?target_lb=227'],
    [['method', 'one_rep_max', 'load_kg=100', 'reps=10'], '/api/method?name=one_rep_max&inputs=%7B%22load_kg%22%3A%22100%22%2C%22reps%22%3A%2210%22%7D'],
    [['find-limiters', 'Nobody'], '/api/find_limiters?athlete=Nobody'],
  ];
  for (const [words, route] of pairs)
    test(`amentum ${words.join(' ')} --json is ${route.split('?')[0]}`, async () => {
      const said = runProgram(store, '--json', ...words);
      // The program ran while this process stood still: a connection the server closed meanwhile is noticed only now.
      await new Promise((done) => setTimeout(done, 50));
      const asked = await get(server().url, route);
      assert.deepEqual(JSON.parse(said.stdout), asked.body);
      assert.equal(said.status, asked.status === 200 ? 0 : 1);
    });
  test('exit codes: 2 for a wrong command line with the nearest word, 3 for a store that cannot be opened', async () => {
    const mistyped = runProgram(store, 'find-limiter', 'x');
    assert.equal(mistyped.status, 2);
    assert.match(mistyped.stderr, /Did you mean "find-limiters"/);
    assert.equal(runProgram('/nowhere/at/all.store', 'roster').status, 3);
  });
}
