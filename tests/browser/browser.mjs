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

// Errors of a page fail the test that opened it.
export async function openPage(browser, url, width = widths.desktop) {
  const page = await browser.newPage({ viewport: { width, height: 900 }, bypassCSP: true });
  page.faults = [];
  page.on('pageerror', (fault) => page.faults.push(fault.message));
  await page.goto(url);
  await page.waitForLoadState('networkidle');
  return page;
}

export async function violations(page) {
  await page.addScriptTag({ content: axe });
  const found = await page.evaluate(() => globalThis.axe.run());
  return found.violations.map((v) => `${v.id}: ${v.nodes[0].html.slice(0, 160)}`);
}

export async function picture(page, folder, name) {
  if (folder) await page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
}
