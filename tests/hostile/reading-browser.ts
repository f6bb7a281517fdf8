import { createReadStream, existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { findChromium, missingChromium } from '../../src/cli/find-chromium';
import { type Listing, type PageExtract, type Pick, type PickField, readFacts } from '../../src/listing';

/** What the page script gave back, with what it cost the page. */
export interface PageReading {
  listing: Listing;
  prototypeClean: boolean;
  longestMs: number;
  totalMs: number;
  /** Longest task of the page's main thread while it was read, in processor time; null unless it was traced. */
  longestTaskMs: number | null;
}

export interface ReadingBrowser {
  /** Opens a page of the folder (or, with `html`, that page) and reads it as the extension's page script does. */
  read(file: string, html?: string, traced?: boolean, picks?: readonly Pick[]): Promise<PageReading>;
  /** Opens a page, starts the picker for a field, lets `act` be the user, and gives what was picked. */
  pick(
    html: string,
    field: PickField,
    act: (page: Page) => Promise<void>,
  ): Promise<{ pick: Pick | null; left: string }>;
  /** Origin that the pages are served from. */
  origin: string;
  close(): Promise<void>;
}

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Bundles a script of the tests as a content script: one classic file, minified. */
export async function bundleScript(entry: string): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'error',
    build: { write: false, minify: true, lib: { entry: here(entry), formats: ['iife'], name: 'tellstampTest' } },
  });
  const [output] = Array.isArray(result) ? result : [result];
  if (!output || !('output' in output)) throw new Error('The page script was not bundled.');
  return output.output[0].code;
}

/** Serves a folder on loopback. `{foreign}` in a page becomes the address of a second origin. */
function serve(folder: string, pages: Map<string, string>, foreign: () => string): Promise<Server> {
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent((request.url ?? '/').replace(/[?#].*$/, '')));
    const made = pages.get(path);
    const file = join(folder, path);
    if (made === undefined && !(path.endsWith('.html') && existsSync(file))) {
      response.writeHead(404).end();
      return;
    }
    response.setHeader('content-type', 'text/html; charset=utf-8');
    if (made !== undefined) response.end(made);
    else {
      let text = '';
      createReadStream(file, 'utf8')
        .on('data', (part) => {
          text += part;
        })
        .on('end', () => response.end(text.replaceAll('{foreign}', foreign())));
    }
  });
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}

const originOf = (server: Server) => `http://127.0.0.1:${(server.address() as AddressInfo).port}`;

async function launchWithScript(folder: string, script: string): Promise<BrowserContext> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(missingChromium);
  const manifest = {
    manifest_version: 3,
    name: 'Reading test',
    version: '1',
    content_scripts: [{ matches: ['http://127.0.0.1/*'], js: ['page-script.js'], run_at: 'document_start' }],
  };
  await writeFile(join(folder, 'manifest.json'), JSON.stringify(manifest));
  await writeFile(join(folder, 'page-script.js'), script);
  return chromium.launchPersistentContext(join(folder, 'profile'), {
    executablePath,
    headless: false,
    args: [
      '--headless=new',
      '--no-sandbox',
      `--disable-extensions-except=${folder}`,
      `--load-extension=${folder}`,
      '--disable-quic',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
    ],
  });
}

interface TraceEvent {
  name: string;
  ph: string;
  /** Processor time in microseconds, which other programs on the machine do not lengthen as they do the clock's. */
  tdur?: number;
}

/** Records the page's tasks; the returned function ends the record and gives the longest, in milliseconds. */
async function startTrace(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  const events: TraceEvent[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await session.send('Tracing.start', { categories: 'devtools.timeline', transferMode: 'ReportEvents' });
  return async () => {
    const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
    await session.send('Tracing.end');
    await complete;
    await session.detach();
    const tasks = events.filter(
      ({ name, ph }) => ph === 'X' && /^(TimerFire|FunctionCall|EventDispatch|EvaluateScript)$/.test(name),
    );
    return Math.max(0, ...tasks.map(({ tdur }) => (tdur ?? 0) / 1000));
  };
}

/** Starts Chromium with the reader as a content script, and a server for the folder's pages. */
export async function openReadingBrowser(pagesFolder: string): Promise<ReadingBrowser> {
  const folder = await mkdtemp(join(tmpdir(), 'tellstamp-reading-'));
  const made = new Map<string, string>();
  const second = await serve(pagesFolder, made, () => '');
  const server = await serve(pagesFolder, made, () => originOf(second));
  const origin = originOf(server);
  const context = await launchWithScript(folder, await bundleScript('page-script.ts'));
  return {
    origin,
    async read(file, html, traced = false, picks = []) {
      if (html !== undefined) made.set(`/${file}`, html);
      const page = await context.newPage();
      try {
        await page.goto(`${origin}/${file}`, { waitUntil: 'load' });
        // A page that makes something itself says when it is there.
        await page.waitForFunction(() => document.documentElement.dataset.ready !== 'no');
        const trace = traced ? await startTrace(page) : null;
        const detail = await page.evaluate(
          (wanted) =>
            new Promise<string>((resolve) => {
              addEventListener('test-listing', (event) => resolve((event as CustomEvent<string>).detail), {
                once: true,
              });
              dispatchEvent(new CustomEvent('test-read', { detail: wanted }));
            }),
          JSON.stringify(picks),
        );
        const longestTaskMs = trace ? await trace() : null;
        const { extract, ...costs } = JSON.parse(detail) as Omit<PageReading, 'listing'> & { extract: PageExtract };
        return { ...costs, listing: readFacts(extract), longestTaskMs };
      } finally {
        await page.close();
      }
    },
    async pick(html, field, act) {
      made.set('/pick.html', html);
      const page = await context.newPage();
      try {
        await page.goto(`${origin}/pick.html`, { waitUntil: 'load' });
        await page.evaluate((detail) => {
          addEventListener('test-picked', (event) => {
            document.documentElement.dataset.picked = (event as CustomEvent<string>).detail;
          });
          dispatchEvent(new CustomEvent('test-pick', { detail }));
        }, JSON.stringify({ field }));
        await act(page);
        await page.waitForFunction(() => document.documentElement.dataset.picked !== undefined);
        const picked = await page.evaluate(() => document.documentElement.dataset.picked ?? 'null');
        return {
          pick: JSON.parse(picked) as Pick | null,
          left: await page.evaluate(() => document.documentElement.outerHTML),
        };
      } finally {
        await page.close();
      }
    },
    async close() {
      await context.close();
      server.close();
      second.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
