// The calendar of kept blocks, read by a program that is not ours: ical.js parses every feed, and each event is compared with
// what /api/block says of its session. [Rfc5545] for the octets themselves.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { newStore, runProgram, serve, test } from './program.mjs';
import { get, post } from './requests.mjs';

const require = createRequire(new URL('../../web/package.json', import.meta.url));
const ICAL = (await import(require.resolve('ical.js'))).default;

const long = 'Jörg Müßig-Ødegård; der Lange, aus Łódź \\ „Wurfhalle am Hafen“, zweiter Trainingsplatz hinter dem Deich';
const kit = `kit,label,item,mass_lb,count
Loft,"hex bar, low handles",hex_bar,55,1
Loft,45 lb plate,plate,45,4
Loft,10 lb plate,plate,10,4
Loft,floor,open_floor,,1
Loft,"rotes Band; das weiche, lange",band,,2
`;

async function hall() {
  const store = newStore();
  const server = await serve(store, '');
  const take = async (kind, text) => {
    const { body } = await post(server.url, '/api/import_records', { kind, text, take: true });
    assert.equal(body.taken, true, JSON.stringify(body));
  };
  await take('facility', 'name,mass_unit,speed_unit\nÜbungshalle,lb,mph\n');
  await take('kit', kit);
  await take('athletes', `name,birth_date,sex,throwing_hand,sport,role,level,training_years\n"${long}",2004-02-01,male,right,baseball,pitcher,college,3\nOna Reyes,2004-02-01,female,right,softball,pitcher,college,3\n`);
  return server;
}

const feedOf = async (server, path) => {
  const answer = await fetch(server.url + path);
  assert.equal(answer.status, 200, path);
  assert.equal(answer.headers.get('content-type'), 'text/calendar; charset=utf-8');
  return answer.text();
};
const eventsOf = (text) => new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));

function assertWritten(text) {
  assert.ok(text.endsWith('END:VCALENDAR\r\n'));
  assert.ok(!/[^\r]\n|\r[^\n]/.test(text), 'every line ends in CRLF');
  for (const line of text.split('\r\n')) assert.ok(Buffer.byteLength(line) <= 75, `${Buffer.byteLength(line)} octets: ${line}`);
}

function assertSameSessions(events, block, name) {
  assert.equal(events.length, block.sessions.length);
  const days = new Map(events.map((each) => [each.startDate.toString(), each]));
  for (const session of block.sessions) {
    const event = days.get(session.date);
    assert.ok(event, session.date);
    assert.ok(event.startDate.isDate);
    assert.equal(event.duration.toSeconds(), 86400);
    assert.equal(event.summary, `${name}: week ${session.week}, session ${session.session} (${Math.round(session.minutes)} min)`);
    const lines = event.description.split('\n');
    for (const [i, line] of session.lines.entries()) {
      const said = lines[i + (session.week_words ? 1 : 0)];
      assert.ok(said.startsWith(`${line.name}: ${line.dose}`), said);
      if (line.load_words) assert.ok(said.includes(line.load_words), said);
      assert.ok(said.endsWith(`rest ${line.rest_minutes} min`), said);
    }
    assert.match(lines.at(-1), /local rules and licensed practice come first/);
  }
}

export function calendarFeedTests() {
  test('another program reads the calendar as the block says it, umlauts, commas and long names included', async () => {
    const server = await hall();
    for (const name of [long, 'Ona Reyes']) {
      const { body: block } = await post(server.url, '/api/plan_block', { athlete: name, start: '2026-06-08' });
      const text = await feedOf(server, `/calendar/${encodeURIComponent(block.athlete)}.ics`);
      assertWritten(text);
      assertSameSessions(eventsOf(text), block, name);
      const calendar = new ICAL.Component(ICAL.parse(text));
      assert.equal(calendar.getFirstPropertyValue('method'), 'PUBLISH');
      // ical.js knows no NAME [Rfc7986] and leaves its backslashes.
      assert.equal(calendar.getFirstPropertyValue('name').replaceAll(/\\(.)/g, '$1'), `${name}, training`);
      const one = await feedOf(server, `/calendar/${encodeURIComponent(block.block)}.ics`);
      assertSameSessions(eventsOf(one), block, name);
      const { body: asked } = await get(server.url, `/api/calendar_feed?athlete=${encodeURIComponent(name)}`);
      assert.equal(asked.text, text);
      assert.equal(asked.sessions, block.sessions.length);
      assert.equal(await feedOf(server, asked.address), text, 'the address it gives leads to it');
    }
    await server.kill();
  });
  test('a block planned again keeps the identity of every session it still has, and no two events share one', async () => {
    const server = await hall();
    const uids = async () => eventsOf(await feedOf(server, '/calendar/ona-reyes.ics')).map((each) => each.uid);
    await post(server.url, '/api/plan_block', { athlete: 'Ona Reyes', start: '2026-06-08' });
    const before = await uids();
    assert.equal(new Set(before).size, before.length);
    const { body: again } = await post(server.url, '/api/plan_block', { athlete: 'Ona Reyes', start: '2026-06-08', training_days: ['tuesday', 'thursday', 'saturday'] });
    assert.deepEqual((await uids()).sort(), before.sort());
    assertSameSessions(eventsOf(await feedOf(server, '/calendar/ona-reyes.ics')), again, 'Ona Reyes');
    await post(server.url, '/api/plan_block', { athlete: 'Ona Reyes', start: '2026-06-22' });
    const events = eventsOf(await feedOf(server, '/calendar/ona-reyes.ics'));
    const days = events.map((each) => each.startDate.toString());
    assert.equal(new Set(days).size, days.length, 'a later block takes over from the day it starts on');
    assert.equal(days.filter((day) => day < '2026-06-22').length, 6);
    assert.equal(new Set(events.map((each) => each.uid)).size, events.length);
    await server.kill();
  });
  test('a block kept for another gym, too, stands in the calendar once', async () => {
    const server = await hall();
    const { body: loft } = await post(server.url, '/api/plan_block', { athlete: 'Ona Reyes', start: '2026-06-08' });
    const other = kit.replaceAll('Loft', 'Shed').replace('Shed,10 lb plate,plate,10,4\n', '');
    assert.equal((await post(server.url, '/api/import_records', { kind: 'kit', text: other, take: true })).body.taken, true);
    const kept = await post(server.url, '/api/retarget_block', { block: 'Ona Reyes', kit: 'Shed', keep: true });
    assert.equal(kept.body.kept_block, `${loft.block}-shed`, JSON.stringify(kept.body));
    assertSameSessions(eventsOf(await feedOf(server, '/calendar/ona-reyes.ics')), loft, 'Ona Reyes');
    assert.equal(eventsOf(await feedOf(server, `/calendar/${loft.block}-shed.ics`)).length, loft.sessions.length);
    await server.kill();
  });
  test('nobody, no block, a wrong ending and a write are answered in a sentence; an empty calendar is one', async () => {
    const server = await hall();
    for (const [path, words] of [['/calendar/ona-rejes.ics', /ona-rejes/], ['/calendar/ona-reyes', /\.ics/], ['/calendar/..%2Fx.ics', /x/]]) {
      const answer = await get(server.url, path);
      assert.equal(answer.status, 404, path);
      assert.match(answer.body.refusal.sentence, words);
    }
    assert.equal((await post(server.url, '/calendar/ona-reyes.ics', {})).status, 405);
    const none = await feedOf(server, '/calendar/ona-reyes.ics');
    assert.equal(eventsOf(none).length, 0);
    assert.match(none, /BEGIN:VJOURNAL/, 'an iCalendar object has one component at least [RFC 5545, 3.6]');
    const { body } = await get(server.url, '/api/calendar_feed?athlete=Ona%20Reyes');
    assert.match(body.words, /no kept block/);
    assert.equal((await get(server.url, '/api/calendar_feed')).status, 422);
    assert.equal((await get(server.url, '/api/calendar_feed?athlete=Ona%20Reyes&block=x')).status, 422);
    assert.equal(runProgram(newStore(), 'calendar-feed', '--athlete', 'Nobody').status, 1);
    await server.kill();
  });
}
