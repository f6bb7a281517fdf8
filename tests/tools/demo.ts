import { spawnSync } from 'node:child_process';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium, missingChromium } from '../../src/cli/find-chromium';
import { type Browser, launch, openTab } from '../browser/launch';
import { openSidePanel, type SidePanel } from '../browser/toolbar';
import { startMarket } from '../market/server';

const root = fileURLToPath(new URL('../../', import.meta.url));
const out = join(root, 'out');
const [page = 'ondrasse-carryall-25-1987.html'] = process.argv.slice(2);
const hasDisplay = Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY) || process.platform !== 'linux';

if (findChromium() === null) {
  console.error(missingChromium);
  process.exit(1);
}
console.log('Building the extension…');
const built = spawnSync('npx', ['wxt', 'build', '-b', 'chrome', '--mv3'], { cwd: root, encoding: 'utf8' });
if (built.status !== 0) {
  console.error(built.stdout, built.stderr);
  process.exit(1);
}

const market = await startMarket();
console.log(`The demo marketplace: ${market.url}`);
const browser = await launch({ shown: hasDisplay });
try {
  const { page: listing, tabId } = await openTab(browser, market.url + page);
  console.log(`Clicking the toolbar button on ${page}…`);
  const panel = await openSidePanel(browser, listing, tabId);
  await follow(panel);
  await printFindings(panel);
  if (hasDisplay) await untilClosed(browser);
  else await keepPictures(panel);
} finally {
  await browser.close();
  await market.close();
}

/** Prints each step of the panel's progress once. */
async function follow(panel: SidePanel): Promise<void> {
  for (let last = ''; ; ) {
    const { stage, words } = await panel.evaluate<{ stage: string; words: string }>(
      `(({ dataset, innerText }) => ({ stage: dataset.stage, words: innerText }))(
        document.querySelector('.progress-line') ?? { dataset: { stage: 'trouble' }, innerText: document.body.innerText })`,
    );
    if (words !== last) console.log(`  ${words}`);
    last = words;
    if (stage === 'done' || stage === 'trouble') return;
    await panel.until(`document.querySelector('.progress-line')?.innerText !== ${JSON.stringify(words)}`, 300_000);
  }
}

async function printFindings(panel: SidePanel): Promise<void> {
  const head = await panel.evaluate<string>(
    `[...document.querySelectorAll('.head-lines > div')].map((one) => one.innerText.replace('\\n', ': ')).join('\\n')`,
  );
  console.log(`\n${head}\n`);
  console.log(`Codes read: ${(await panel.codes()).join(', ') || 'none'}`);
  for (const { kind, statement } of await panel.findings()) console.log(`  ${kind.padEnd(13)} ${statement}`);
  const questions = await panel.evaluate<string[]>(
    `[...document.querySelectorAll('.questions li')].map((one) => one.firstChild.textContent)`,
  );
  if (questions.length > 0) console.log('\nTo ask the seller:');
  for (const [index, question] of questions.entries()) console.log(`  ${index + 1}. ${question}`);
}

/** No display: what the panel shows is kept as pictures. */
async function keepPictures(panel: SidePanel): Promise<void> {
  await mkdir(out, { recursive: true });
  for (const width of [320, 400, 600]) {
    const file = join(out, `panel-${width}.png`);
    await writeFile(file, await panel.picture(width));
    console.log(`${width === 320 ? '\n' : ''}Picture of the panel: out/panel-${width}.png`);
  }
}

async function untilClosed(running: Browser): Promise<void> {
  console.log('\nThe panel is open beside the listing. Close the browser window to end the demo.');
  await new Promise<void>((closed) => running.context.once('close', () => closed()));
}
