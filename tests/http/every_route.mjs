// Each route of the program's own OpenAPI document, asked wrongly in every way there is: it must refuse in a sentence
// that names the field, with the right status, and nothing may be kept.
import assert from 'node:assert/strict';
import { test } from './program.mjs';
import { get, post } from './requests.mjs';

async function routes(url) {
  const { paths } = (await get(url, '/api/openapi.json')).body;
  return Object.entries(paths).flatMap(([path, verbs]) =>
    Object.entries(verbs).map(([verb, route]) => {
      const schema = route.requestBody?.content['application/json'].schema;
      const parameters = route.parameters ?? [];
      return {
        path,
        verb,
        fields: schema ? Object.entries(schema.properties) : parameters.map((each) => [each.name, each.schema]),
        needed: schema ? (schema.required ?? []) : parameters.filter((each) => each.required).map((each) => each.name),
      };
    }),
  );
}

const query = (fields) => new URLSearchParams(fields).toString();
const asked = (url, { path, verb }, fields) => (verb === 'get' ? get(url, `${path}?${query(fields)}`) : post(url, path, fields));
// A value of the right kind, so that only the one wrong field can be what is refused.
const someValue = (schema) => {
  const kind = [schema.type ?? schema.anyOf?.[0]?.type].flat()[0];
  return { string: 'x', integer: 1, number: 1, boolean: false, array: [] }[kind] ?? 'x';
};
const neededValues = ({ fields, needed }) => Object.fromEntries(fields.filter(([name]) => needed.includes(name)).map(([name, schema]) => [name, someValue(schema)]));
const isNumber = (schema) => ['integer', 'number'].includes(someKind(schema));
const someKind = (schema) => [schema.type ?? schema.anyOf?.[0]?.type].flat().find((each) => each !== 'null');

function assertRefused(answer, status, name, where) {
  assert.equal(answer.status, status, `${where}: ${JSON.stringify(answer.body)}`);
  const { refusal } = answer.body;
  assert.ok(refusal.sentence.length > 15, where);
  if (name) assert.ok(refusal.field.includes(name) || refusal.sentence.includes(name), `${where}: ${refusal.sentence}`);
}

export function everyRouteTests(server) {
  test('every route refuses a field it does not know', async () => {
    const { url } = server();
    for (const route of await routes(url))
      assertRefused(await asked(url, route, { ...neededValues(route), no_such_field: 'x' }), 422, 'no_such_field', route.path);
  });
  test('every route names each field it needs when that is missing', async () => {
    const { url } = server();
    let checked = 0;
    for (const route of await routes(url))
      for (const name of route.needed) {
        const { [name]: left, ...others } = neededValues(route);
        assertRefused(await asked(url, route, others), 422, name, `${route.path} without ${name} (${left})`);
        checked += 1;
      }
    assert.ok(checked > 20, `${checked} needed fields`);
  });
  test('every route refuses a field of the wrong type', async () => {
    const { url } = server();
    let checked = 0;
    for (const route of await routes(url))
      for (const [name, schema] of route.fields) {
        if (route.verb === 'get' && !isNumber(schema)) continue; // any text is a text
        const wrong = isNumber(schema) ? 'many' : someKind(schema) === 'string' ? 7 : 'x';
        assertRefused(await asked(url, route, { ...neededValues(route), [name]: wrong }), 422, name, `${route.path} ${name}`);
        checked += 1;
      }
    assert.ok(checked > 40, `${checked} fields`);
  });
  test('every route refuses the other verb with 405, and a body that is no JSON', async () => {
    const { url } = server();
    for (const { path, verb } of await routes(url)) {
      assertRefused(verb === 'get' ? await post(url, path, {}) : await get(url, path), 405, '', path);
      for (const body of verb === 'post' ? ['', '{', 'null', '[]', '"text"', '{"athlete":'] : [])
        assertRefused(await post(url, path, body), 422, '', `${path} ${body}`);
    }
  });
  test('every route that takes an athlete answers an unknown one with 404 and the nearest name', async () => {
    const { url } = server();
    const full = {
      '/api/record_test': { date: '2026-05-30', test: 'body_mass', trials: [{ body_mass_lb: 140 }] },
      '/api/record_throws': { date: '2026-05-30', setting: 'game', count: 10 },
      '/api/record_pain': { region: 'elbow', words: 'hurts', noted_by: 'C' },
      '/api/record_clearance': { number: 1, cleared_by: 'Dr. A', recorded_by: 'C' },
      '/api/answer_stop': { code: 'rest_not_over', coach: 'C', reason: 'a reason long enough' },
      '/api/join_team': { team: 'Harbour Gulls' },
      '/api/plan_ramp': { target_week: 100 },
      '/api/record_return_plan': { clinician: 'Dr. A', recorded_by: 'C', steps: [{ throws: 20 }] },
      '/api/log_set': { key: 'http-nobody-01', date: '2026-05-30', exercise: 'hex_bar_deadlift_high', set_number: 1 },
      '/api/record_trace': { file_name: 'jump.txt', effort: 'countermovement_jump', date: '2026-05-30' },
      '/api/judge_change': { test: 'body_mass' },
      '/api/load_velocity': { test: 'hex_bar_high_max' },
      '/api/solve_setup': { lift: 'back_squat', load_lb: 135 },
      '/api/solve_equivalent': { lift: 'split_squat', load_lb: 135 },
      '/api/measure_lead_leg': { force_x_bw: -0.7, force_y_bw: 1.5, pressure_in: 2, shin_lean_deg: -10, thigh_deg: 55 },
      '/api/measure_ball_throw': { stance: 'kneeling', ball_lb: 4, thigh_deg: 90, trunk_deg: 80, upper_arm_deg: 100, forearm_deg: 130 },
      '/api/import_block': { text: 'week,exercise,sets,reps\n1,box_jump,3,3\n' },
      '/api/override_caution': { exercise: 'bench_press_straight_bar', caution: 'every_thrower', reason: 'a reason long enough', coach: 'C' },
    };
    for (const route of await routes(url)) {
      if (!route.fields.some(([name]) => name === 'athlete')) continue;
      const answer = await asked(url, route, { ...full[route.path], athlete: 'Marisol Quai' });
      assertRefused(answer, 404, 'athlete', route.path);
      assert.match(answer.body.refusal.sentence, /Marisol Quay/, route.path);
    }
  });
}
