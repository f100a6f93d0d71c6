// Records in and out: a bad line stops the file and says where; a good file is taken once.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from '../http/program.mjs';
import { get } from '../http/requests.mjs';
import { keptLines, openPage } from './browser.mjs';

const good = 'athlete,date,test,speed_mph,trial,device,place_measured\nMarisol Quay,2026-05-31,throwing_velocity,60.1,1,radar 1,out_of_hand\n';
const file = (text) => ({ name: 'test_results.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });

export function importRecordsTests(world) {
  test('a file with a bad line is refused with line and column, a good one is taken, and once only', async () => {
    const before = (await keptLines(world.server.url, 'test_results')).length;
    const page = await openPage(world.browser, `${world.server.url}/#/import_records`);
    await page.getByLabel('File', { exact: true }).setInputFiles(file(good.replace('60.1', '140')));
    await page.getByText(/Line 2: .*140/).waitFor();
    await page.getByText(/speed/).first().waitFor();
    assert.ok(await page.getByRole('button', { name: 'Take it' }).isDisabled());
    await page.getByLabel('Or paste its lines here').fill(good);
    assert.ok(await page.getByRole('button', { name: 'Take it' }).isDisabled(), 'not before it has been shown');
    await page.getByRole('button', { name: 'Show what it would do' }).click();
    await page.getByText('It would add 1 new').waitFor();
    assert.equal((await keptLines(world.server.url, 'test_results')).length, before, 'showing saves nothing');
    await page.getByRole('button', { name: 'Take it' }).click();
    await page.getByText('Taken: 1 new').waitFor();
    await page.getByRole('button', { name: 'Show what it would do' }).click();
    await page.getByRole('cell', { name: 'already held', exact: true }).waitFor();
    assert.ok(await page.getByRole('button', { name: 'Take it' }).isDisabled());
    assert.equal((await keptLines(world.server.url, 'test_results')).length, before + 1);
    const zone = page.getByRole('form', { name: 'Whose days count' });
    await zone.getByLabel('Time zone').fill('Europe/Atlantis');
    await zone.getByRole('button').click();
    await page.getByText('There is no time zone "Europe/Atlantis"').waitFor();
    await zone.getByLabel('Time zone').fill('');
    await zone.getByRole('button').click();
    await page.getByText('Days written down stay as they are').waitFor();
    await page.close();
  });
  test('a file that is not UTF-8 is refused before a name loses a letter', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/import_records`);
    const text = 'name,birth_date,sex,throwing_hand,sport,role,level,kit\nJos\u00e9 Prueba,2000-01-01,male,right,baseball,pitcher,college,saltgrass-hall\n';
    const athletes = (buffer) => ({ name: 'athletes.csv', mimeType: 'text/csv', buffer });
    await page.getByLabel('File', { exact: true }).setInputFiles(athletes(Buffer.from(text, 'latin1')));
    await page.getByText('athletes.csv is not written in UTF-8').waitFor();
    assert.ok(await page.getByRole('button', { name: 'Take it' }).isDisabled());
    await page.getByLabel('File', { exact: true }).setInputFiles(athletes(Buffer.from(text, 'utf8')));
    await page.getByRole('cell', { name: /José Prueba/ }).waitFor();
    await page.close();
  });
  test('a file mended and chosen again under the same name is read again', async () => {
    const page = await openPage(world.browser, `${world.server.url}/#/import_records`);
    const path = join(mkdtempSync(join(tmpdir(), 'amentum-')), 'test_results.csv');
    for (const [speed, verdict] of [['140', 'refused'], ['60.2', 'new']]) {
      writeFileSync(path, good.replace('60.1', speed).replace('05-31', '05-30'));
      const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByLabel('File', { exact: true }).click()]);
      await chooser.setFiles(path);
      await page.getByRole('cell', { name: verdict, exact: true }).waitFor();
    }
    await page.close();
  });
  test('the files written out are those of the answer, byte for byte', async () => {
    const atOnce = 8; // a browser lets one page download ten files before it asks
    const open = async () => {
      const opened = await openPage(world.browser, `${world.server.url}/#/import_records`);
      await opened.getByRole('button', { name: 'Write the files' }).click();
      return opened;
    };
    const { files } = (await get(world.server.url, '/api/export_records')).body;
    let page = await open();
    for (const [i, { name, text }] of files.entries()) {
      if (i > 0 && i % atOnce === 0) {
        await page.close();
        page = await open();
      }
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name, exact: true }).click()]);
      assert.equal(readFileSync(await download.path(), 'utf8'), text, name);
    }
    await page.close();
  });
}
