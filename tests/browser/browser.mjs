// The real browser (Debian's chromium, headless) on the real program.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const require = createRequire(new URL('../../web/package.json', import.meta.url));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');

export const widths = { desktop: 1280, tablet: 820, phone: 390 };
const quiet = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
               '--disable-component-update', '--disable-sync'];

export async function startBrowser() {
  return chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: quiet });
}

// Each page is a browser profile of its own: nothing kept on the "device" comes from another test.
// Errors of a page fail the test that opened it, at the latest when it closes the page.
export async function openPage(browser, url, width = widths.desktop) {
  const page = await browser.newPage({ viewport: { width, height: 900 }, bypassCSP: true });
  page.faults = [];
  page.on('pageerror', (fault) => page.faults.push(fault.message));
  const close = page.close.bind(page);
  page.close = async () => {
    await close();
    if (page.faults.length) throw new Error(`the page failed: ${page.faults.join('; ')}`);
  };
  await page.goto(url);
  await page.waitForLoadState('networkidle');
  return page;
}

export async function violations(page) {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.addScriptTag({ content: axe });
  const found = await page.evaluate(() => globalThis.axe.run({ resultTypes: ['violations'] })); // all rules, but no list of what is well
  return found.violations.map((v) => `${v.id}: ${v.nodes[0].html.slice(0, 160)}`);
}

export async function picture(page, folder, name) {
  if (folder) await page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
}

// Presses Tab, and nothing else, until the element with this name holds the focus.
export async function tabTo(page, name, most = 300) {
  for (let i = 0; i < most; i += 1) {
    await page.keyboard.press('Tab');
    const here = await page.evaluate(() => {
      const element = document.activeElement;
      return element?.getAttribute('aria-label') ?? (element?.labels?.[0]?.textContent || element?.textContent || '').trim();
    });
    if (here.startsWith(name)) return;
  }
  throw new Error(`Tab never reached "${name}" in ${most} steps`);
}

// The keys and lines of everything kept of one kind, by the program's own way out.
export async function keptLines(url, kind) {
  const { files } = await fetch(`${url}/api/export_records`).then((answer) => answer.json());
  return files.find((file) => file.kind === kind).text.trim().split('\n').slice(1);
}
