// A coach's own block: every fault listed, the sheets as the route answers them, kept when told to, written out byte for byte.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { newHall, serve, test } from '../http/program.mjs';
import { get, post } from '../http/requests.mjs';
import { openPage, picture, violations, widths } from './browser.mjs';

const text = `week,session,weekday,exercise,sets,reps,load_lb,reserve
${[1, 2, 3, 4].map((week) => `${week},1,monday,"Hex-bar deadlift, high handles",3,5,185,2\n${week},1,monday,Side-on scoop throw,3,5,6,\n${week},2,wednesday,"Goblet squat, one dumbbell",3,8,50,3\n`).join('')}`;
const file = (content, name = 'block.csv') => ({ name, mimeType: 'text/csv', buffer: Buffer.from(content) });

const hall = (world) => serve(newHall(), world.pages);

export function importBlockTests(world) {
  test('a file with faults lists each by line and column, and cannot be kept', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/import_block/luca-thistlewood`);
    await page.getByRole('option', { name: 'Luca Thistlewood' }).first().waitFor({ state: 'attached' });
    const bad = text.replace('monday', 'mnday').replace(',3,8,50', ',3,8,51');
    await page.getByLabel('File', { exact: true }).setInputFiles(file(bad));
    await page.getByRole('heading', { name: /1 problem/ }).waitFor();
    const { body } = await post(world.server.url, '/api/import_block', { athlete: 'luca-thistlewood', text: bad });
    for (const problem of body.problems) await page.getByText(problem.sentence).waitFor();
    assert.ok(await page.getByRole('button', { name: 'Keep the block' }).isDisabled());
    await page.close();
  });
  for (const [device, width] of Object.entries(widths))
    test(`a block brought in on a ${device} is shown as the route answers it, kept, and written out again`, async () => {
      const server = await hall(world);
      const page = await openPage(world.browser, `${server.url}/#/import_block/marisol-quay`, width);
      await page.getByRole('option', { name: 'Marisol Quay' }).first().waitFor({ state: 'attached' });
      await page.getByLabel('File', { exact: true }).setInputFiles(file(text));
      await page.getByRole('heading', { name: 'The sheets' }).waitFor();
      const { body } = await post(server.url, '/api/import_block', { athlete: 'marisol-quay', text });
      const shown = (await page.locator('main').innerText()).replace(/\s+/g, ' ');
      for (const session of body.block.sessions) {
        assert.ok(shown.includes(`Week ${session.week}, session ${session.session}: ${session.weekday}, ${session.date}`));
        for (const line of session.lines) {
          assert.ok(shown.includes(line.name), line.name);
          assert.ok(shown.includes(line.load_words), line.load_words);
        }
      }
      for (const finding of body.block.findings) assert.ok(shown.includes(finding.sentence), finding.sentence);
      if (body.block.reach) assert.ok(shown.includes(`${body.block.reach.points.toFixed(1)} of 100 points`));
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
      assert.deepEqual(await violations(page), []);
      await picture(page, world.pictures, `import-block-${device}`);
      assert.equal((await get(server.url, `/api/block?block=${body.block.block}`)).status, 404, 'showing keeps nothing');
      await page.getByRole('button', { name: 'Keep the block' }).click();
      await page.getByRole('link', { name: 'See the kept block' }).waitFor();
      assert.equal((await get(server.url, `/api/block?block=${body.block.block}`)).status, 200);
      await page.getByRole('button', { name: 'Write the file' }).click();
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: /\.csv$/ }).click()]);
      const { files } = (await get(server.url, '/api/export_block?block=marisol-quay')).body;
      assert.equal(readFileSync(await download.path(), 'utf8'), files[0].text);
      await page.close();
      await server.kill();
    });
}
