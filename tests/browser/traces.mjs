// Force traces drawn: looked at closely, an event moved by key, mouse and finger, trials side by side, a C3D file inspected.
import assert from 'node:assert/strict';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';
import { c3dFile, forceFile, jumpForces } from './made_traces.mjs';
import { day, drop, fixed, jump, keptTraces, restless, takeOff, who } from './record_traces.mjs';

const textOf = async (page) => (await page.locator('main').innerText()).replace(/\s+/g, ' ');
const tooSmall = () =>
  [...document.querySelectorAll('main button, main input:not([type=checkbox]), main select, main summary')]
    .filter((each) => each.offsetParent !== null && each.getBoundingClientRect().height < 43.5)
    .map((each) => each.outerHTML.slice(0, 90));

async function fitsAndIsSound(page, name) {
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth), `${name} scrolls sideways`);
  assert.deepEqual(await violations(page), [], name);
  assert.deepEqual(await page.evaluate(tooSmall), [], name);
}

// After recordTraceTests: these look at the traces those have kept.
export function traceTests(world) {
  const recordPage = (width) => openPage(world.browser, `${world.server.url}/#/record_trace`, width);
  const openFirst = async (width) => {
    const [{ trace }] = await keptTraces(world.server.url);
    const page = await openPage(world.browser, `${world.server.url}/#/trace/${trace}`, width);
    await takeOff(page).waitFor();
    return { page, trace };
  };

  test('the page of a trace shows each number, interval, event and phase of the answer', async () => {
    const { page, trace } = await openFirst();
    const { measured } = (await get(world.server.url, `/api/trace?trace=${trace}`)).body;
    const text = await textOf(page);
    assert.ok(measured.metrics.length > 5);
    for (const metric of measured.metrics) {
      assert.ok(text.includes(metric.name), metric.name);
      assert.ok(text.includes(`${fixed(metric.value, metric.decimals)} ${metric.unit}`), metric.name);
      if (metric.low !== null) assert.ok(text.includes(`${fixed(metric.low, metric.decimals)} to ${fixed(metric.high, metric.decimals)}`), metric.name);
      assert.ok(text.includes(metric.note.replaceAll(' days', '\u00a0days').replace(/\s+/g, ' ').slice(0, 30)), metric.note);
    }
    for (const event of measured.events) assert.ok(text.includes(`${event.name} ${fixed(event.used_s, 3)}`.replace(/\s+/g, ' ')), event.name);
    for (const phase of measured.phases) assert.ok(text.includes(phase.name), phase.name);
    await page.close();
  });
  test('an event moved by keys: one sample and ten, a reason is asked for, the automatic time stays, and it goes back', async () => {
    const { page, trace } = await openFirst();
    const route = `/api/trace?trace=${trace}`;
    const found = (await get(world.server.url, route)).body.measured;
    const automatic = found.events.find((event) => event.event === 'take_off').automatic_s;
    await takeOff(page).focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Shift+ArrowRight');
    const moved = fixed(automatic + 0.009, 3);
    assert.equal(await takeOff(page).getAttribute('aria-valuetext'), `${moved} s, moved; found at ${fixed(automatic, 3)} s`);
    assert.ok(await takeOff(page).evaluate((flag) => flag === document.activeElement), 'the focus stays on the event');
    assert.equal(await page.getByRole('slider', { name: 'Landing' }).getAttribute('aria-disabled'), 'true');
    await page.getByLabel(/^Why\?/).fill('short');
    await page.getByRole('button', { name: 'Keep the move' }).click();
    await page.getByRole('alert').waitFor();
    assert.equal((await get(world.server.url, route)).body.moves.length, 0);
    await page.getByLabel(/^Why\?/).fill('the toes left the plate later than that');
    await page.getByRole('button', { name: 'Keep the move' }).click();
    await page.getByText('Measured again.').waitFor();
    const after = (await get(world.server.url, route)).body;
    const [event] = after.measured.events.filter((each) => each.event === 'take_off');
    assert.equal(fixed(event.used_s, 3), moved);
    assert.equal(event.automatic_s, automatic);
    const row = (await page.getByRole('row', { name: /^Time in the air/ }).innerText()).replace(/\s+/g, ' ');
    for (const { metrics } of [found, after.measured]) {
      const air = metrics.find((metric) => metric.name === 'Time in the air');
      assert.ok(row.includes(`${fixed(air.value, air.decimals)} ${air.unit}`), `${row}: ${air.value}`);
    }
    assert.ok((await page.getByRole('row', { name: /^Take-off moved by hand/ }).innerText()).includes(fixed(automatic, 3)), 'its automatic time');
    assert.match(await textOf(page), /Events moved by hand .* the toes left the plate later than that/);
    await page.getByRole('button', { name: 'Take-off: back to the automatic time' }).click();
    await page.getByLabel(/^Why\?/).fill('it was right as it had been found');
    await page.getByRole('button', { name: 'Keep the move' }).click();
    await page.getByText('it was right as it had been found').first().waitFor();
    assert.deepEqual((await get(world.server.url, route)).body.measured.metrics, found.metrics);
    await page.close();
  });
  test('an event dragged by the mouse, by its flag and by its line, and left where it was', async () => {
    const { page } = await openFirst();
    const time = async () => Number(await takeOff(page).getAttribute('aria-valuenow'));
    const start = await time();
    const drag = async (from, y, by) => {
      await page.mouse.move(from, y);
      await page.mouse.down();
      await page.mouse.move(from + by / 2, y, { steps: 4 });
      await page.mouse.move(from + by, y, { steps: 4 });
      await page.mouse.up();
    };
    const flag = await takeOff(page).boundingBox();
    await drag(flag.x + 20, flag.y + 10, -40);
    const once = await time();
    assert.ok(once < start - 0.01, `${once} after ${start}`);
    const line = await takeOff(page).boundingBox();
    const paper = await page.getByRole('img', { name: /^Countermovement jump/ }).boundingBox();
    await drag(line.x + 1, paper.y + paper.height - 60, 25);
    assert.ok((await time()) > once + 0.005, 'by its line');
    await page.getByRole('button', { name: 'Leave it where it was' }).click();
    assert.equal(await time(), start);
    await page.close();
  });
  test('a finger drags an event, a finger beside it drags the paper, two fingers come closer', async () => {
    const { page } = await openFirst(widths.phone);
    const hand = await page.context().newCDPSession(page);
    await hand.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 2 });
    const touch = (type, ...points) => hand.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(([x, y], id) => ({ x, y, id })) });
    const strip = page.getByRole('slider', { name: 'Part of the trace on the paper' });
    const part = async () => (await strip.getAttribute('aria-valuetext')).match(/[\d.]+/g).map(Number);
    const paper = await page.getByRole('img', { name: /^Countermovement jump/ }).boundingBox();
    await page.getByRole('button', { name: 'Whole trace' }).scrollIntoViewIfNeeded();
    const low = paper.y + paper.height - 60 - (await page.evaluate(() => scrollY));
    const [from, to] = await part();
    await touch('touchStart', [100, low], [200, low]);
    await touch('touchMove', [80, low], [280, low]);
    await touch('touchEnd');
    const [nearFrom, nearTo] = await part();
    assert.ok(Math.abs((to - from) / (nearTo - nearFrom) - 2) < 0.2, 'twice as close');
    await page.getByRole('button', { name: 'The effort' }).click();
    const inFlight = (await takeOff(page).boundingBox()).x + 38; // no event stands within a finger of it
    const [before] = await part();
    await touch('touchStart', [inFlight, low]);
    for (let by = 4; by <= 40; by += 4) await touch('touchMove', [inFlight - by, low]);
    await touch('touchEnd');
    assert.ok((await part())[0] > before + 0.1, 'the paper went along with the finger');
    assert.equal(await page.getByRole('button', { name: 'Keep the move' }).count(), 0, 'and no event with it');
    await takeOff(page).scrollIntoViewIfNeeded();
    const flag = await takeOff(page).boundingBox();
    const start = Number(await takeOff(page).getAttribute('aria-valuenow'));
    await touch('touchStart', [flag.x + 40, flag.y + 16]);
    for (let x = 36; x >= 0; x -= 4) await touch('touchMove', [flag.x + x, flag.y + 16]);
    await touch('touchEnd');
    assert.ok(Number(await takeOff(page).getAttribute('aria-valuenow')) < start, 'a finger on the flag moves it');
    await page.close();
  });
  test('a trace of 120,000 samples: drawn, dragged along and zoomed', async () => {
    const page = await recordPage();
    const rate = 2000;
    const long = forceFile(`${who} countermovement jump ${day} trial 50.csv`, jumpForces({ rate, quiet: 57.6, seed: 50 }), rate);
    assert.ok(long.buffer.toString().split('\n').length > 120_000);
    await drop(page, [long]);
    await page.getByRole('button', { name: /^Look, / }).click();
    await takeOff(page).waitFor();
    await page.getByRole('button', { name: 'Whole trace' }).click();
    const strip = page.getByRole('slider', { name: 'Part of the trace on the paper' });
    assert.match(await strip.getAttribute('aria-valuetext'), /^0\.00 to 6\d\.\d\d s$/);
    await page.getByRole('button', { name: 'Closer' }).click();
    const paper = page.getByRole('img', { name: /^Countermovement jump/ });
    await paper.scrollIntoViewIfNeeded();
    const box = await paper.boundingBox();
    const before = await strip.getAttribute('aria-valuetext');
    await page.evaluate(() => {
      globalThis.frames_ = [];
      const note = (now) => { globalThis.frames_.push(now); requestAnimationFrame(note); };
      requestAnimationFrame(note);
    });
    await page.mouse.move(box.x + 300, box.y + box.height - 80);
    await page.mouse.down();
    for (let i = 0; i < 90; i += 1) await page.mouse.move(box.x + 300 + 3 * i, box.y + box.height - 80);
    await page.mouse.up();
    const frames = await page.evaluate(() => globalThis.frames_.map((now, i, all) => now - (all[i - 1] ?? now)).slice(1).sort((a, b) => a - b));
    console.log(`        dragged along: median frame ${frames[frames.length >> 1].toFixed(1)} ms, slowest of twenty ${frames[Math.floor(frames.length * 0.95)].toFixed(1)} ms (${frames.length} frames)`);
    assert.notEqual(await strip.getAttribute('aria-valuetext'), before);
    await strip.focus();
    await page.keyboard.press('End');
    assert.match(await strip.getAttribute('aria-valuetext'), / to 6\d\.\d\d s$/);
    await page.keyboard.press('+');
    await page.keyboard.press('Home');
    assert.match(await strip.getAttribute('aria-valuetext'), /^0\.00 to /);
    await page.close();
  });

  test('trials of a day stand side by side with the numbers, means and words of the answer, and lead to their traces', async () => {
    const { groups } = (await get(world.server.url, '/api/traces?athlete=marisol-quay')).body;
    const page = await openPage(world.browser, `${world.server.url}/#/traces/marisol-quay`);
    for (const button of await page.getByRole('button', { name: /^All \d+ numbers/ }).all()) await button.click();
    const text = await textOf(page);
    for (const spread of groups[0].spreads) {
      assert.ok(text.includes(spread.name), spread.name);
      assert.ok(text.includes(fixed(spread.mean, spread.decimals)), spread.name);
      assert.ok(text.replaceAll('\u00a0', ' ').includes(spread.words), spread.words);
    }
    assert.equal(await page.getByRole('img', { name: /the force on the plate/ }).count(), groups[0].trials.length);
    await page.getByRole('link', { name: /^Open trial 2,/ }).click();
    await page.getByRole('heading', { name: `${who}: Countermovement jump` }).waitFor();
    await page.close();
  });
  test('a thrower’s page and the test day lead to the traces', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/athlete_record/marisol-quay`);
    await page.getByRole('link', { name: 'Force traces' }).last().click();
    await page.getByRole('heading', { name: `${who}: force traces` }).waitFor();
    await page.goto(`${world.server.url}/#/test_day`);
    await page.getByRole('link', { name: 'Bring in the force traces' }).click();
    await page.getByRole('heading', { name: 'Force traces', exact: true }).waitFor();
    await page.close();
  });
  test('a C3D file shows its header, plate, channels and parameters as they were written', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/inspect_c3d`);
    await page.getByLabel('C3D file', { exact: true }).setInputFiles(c3dFile('stand.c3d'));
    await page.getByRole('heading', { name: 'Parameters' }).waitFor();
    const text = await textOf(page);
    for (const written of ['Frames 400', 'Frames a second 1,000', 'Fz1', 'Nmm', '600.000, 400.000, 0.000', 'FORCE_PLATFORM: ORIGIN'])
      assert.ok(text.includes(written), `${written} in ${text.slice(0, 600)}`);
    await page.getByLabel('Find a parameter').fill('analog rate');
    await page.getByText(/^1 of \d+ parameters$/).waitFor();
    for (const [device, width] of Object.entries(widths)) {
      await page.setViewportSize({ width, height: 900 });
      await fitsAndIsSound(page, `inspect_c3d at ${width}`);
      await picture(page, world.pictures, `inspect-c3d-${device}`);
    }
    await page.getByLabel('C3D file', { exact: true }).setInputFiles({ name: 'no.c3d', mimeType: '', buffer: Buffer.from('not a C3D file at all') });
    await page.getByRole('alert').waitFor();
    await page.close();
  });
  for (const [device, width] of Object.entries(widths))
    test(`the pages of force traces on a ${device}: nothing cut off, no violation, on the screen and in print`, async () => {
      const { page } = await openFirst(width);
      await takeOff(page).focus();
      await page.keyboard.press('Shift+ArrowLeft');
      await fitsAndIsSound(page, `trace at ${width}`);
      await picture(page, world.pictures, `trace-${device}`);
      await page.emulateMedia({ media: 'print' });
      assert.deepEqual(await violations(page), [], `trace at ${width} in print`);
      await page.close();
      const all = await openPage(world.browser, `${world.server.url}/#/traces/marisol-quay`, width);
      await fitsAndIsSound(all, `traces at ${width}`);
      await picture(all, world.pictures, `traces-${device}`);
      await all.emulateMedia({ media: 'print' });
      assert.deepEqual(await violations(all), [], `traces at ${width} in print`);
      await all.close();
      const bring = await recordPage(width);
      await drop(bring, [jump(60), restless, forceFile('plate.csv', jumpForces())]);
      await bring.getByText('About all of these files').click();
      for (const line of [restless, jump(60)]) await bring.getByRole('button', { name: `Look, ${line.name}` }).click();
      await takeOff(bring).waitFor();
      await bring.getByText('Not measured').waitFor();
      await fitsAndIsSound(bring, `record_trace at ${width}`);
      await picture(bring, world.pictures, `record-trace-${device}`);
      await bring.emulateMedia({ media: 'print' });
      assert.deepEqual(await violations(bring), [], `record_trace at ${width} in print`);
      await bring.close();
    });
}
