import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const built = fileURLToPath(new URL('../../.output/firefox-mv3', import.meta.url));
const addOnId = 'tellstamp@tellstamp.example';
/** The add-on's address inside this profile: Firefox makes one up unless a preference names it. */
const addOnHost = '6f0c2f9e-3c5a-4f4e-9a43-5b1d2f0a7e11';

export const findFirefox = (): string | null =>
  ['firefox-esr', 'firefox'].find((name) => spawnSync(name, ['--version']).status === 0) ?? null;

interface Waiting {
  resolve(result: unknown): void;
  reject(error: Error): void;
}

/** Firefox with the built add-on, over WebDriver BiDi: only what the smoke test needs. */
export class Firefox {
  private nextId = 1;
  private readonly waiting = new Map<number, Waiting>();

  private constructor(
    private readonly process: ChildProcess,
    private readonly socket: WebSocket,
    private readonly profile: string,
  ) {
    socket.addEventListener('message', ({ data }) => {
      const message = JSON.parse(String(data));
      const asked = this.waiting.get(message.id);
      this.waiting.delete(message.id);
      if (message.type === 'error') asked?.reject(new Error(`${message.error}: ${message.message}`));
      else asked?.resolve(message.result);
    });
  }

  /** Starts it with some hosts granted, since no test can click its toolbar, and with names that stand for loopback. */
  static async start(name: string, hosts: string[], localNames: string[] = []): Promise<Firefox> {
    const profile = await mkdtemp(join(tmpdir(), 'tellstamp-firefox-'));
    const uuids = JSON.stringify(JSON.stringify({ [addOnId]: addOnHost }));
    await writeFile(
      join(profile, 'user.js'),
      [
        `user_pref("extensions.webextensions.uuids", ${uuids});`,
        `user_pref("network.dns.localDomains", ${JSON.stringify(localNames.join(','))});`,
        '',
      ].join('\n'),
    );
    const copy = join(profile, 'add-on');
    await cp(built, copy, { recursive: true });
    const manifest = JSON.parse(await readFile(join(copy, 'manifest.json'), 'utf8'));
    await writeFile(join(copy, 'manifest.json'), JSON.stringify({ ...manifest, host_permissions: hosts }));
    const options = ['--headless', '--remote-debugging-port=0', '--remote-allow-system-access', '--profile', profile];
    const running = spawn(name, options, { stdio: ['ignore', 'ignore', 'pipe'] });
    const address = await new Promise<string>((resolve, reject) => {
      let said = '';
      running.stderr?.on('data', (chunk) => {
        said += chunk;
        const found = /listening on (ws:\/\/\S+)/.exec(said);
        if (found?.[1]) resolve(found[1]);
      });
      running.on('exit', () => reject(new Error(`Firefox ended at once: ${said.slice(-500)}`)));
    });
    const socket = new WebSocket(`${address}/session`);
    await new Promise((opened, failed) => {
      socket.addEventListener('open', opened);
      socket.addEventListener('error', () => failed(new Error('no connection to Firefox')));
    });
    const firefox = new Firefox(running, socket, profile);
    await firefox.send('session.new', { capabilities: {} });
    await firefox.send('webExtension.install', { extensionData: { type: 'path', path: copy } });
    // The page that opens after installing would else come before the tab that a test looks at.
    const start = await firefox.contextOf(firefox.extensionUrl('watchlist.html#start'));
    await firefox.send('browsingContext.close', { context: start });
    return firefox;
  }

  send<T>(method: string, params: object): Promise<T> {
    const id = this.nextId++;
    return new Promise((resolve, reject) => {
      this.waiting.set(id, { resolve: resolve as (result: unknown) => void, reject });
      this.socket.send(JSON.stringify({ id, method, params }));
    });
  }

  /** Opens an address in a new tab and waits until it is loaded. */
  async open(url: string, background = false): Promise<string> {
    const { context } = await this.send<{ context: string }>('browsingContext.create', { type: 'tab', background });
    await this.send('browsingContext.navigate', { context, url, wait: 'complete' });
    return context;
  }

  /** The tab that shows an address, as soon as one does. */
  async contextOf(url: string): Promise<string> {
    for (const started = Date.now(); Date.now() - started < 30_000; ) {
      const { contexts } = await this.send<{ contexts: { context: string; url: string }[] }>(
        'browsingContext.getTree',
        { maxDepth: 0 },
      );
      const found = contexts.find((one) => one.url === url);
      if (found) return found.context;
    }
    throw new Error(`no tab came to show ${url}`);
  }

  readonly extensionUrl = (path: string) => `moz-extension://${addOnHost}/${path}`;

  /** The value of an expression in a tab, as JSON; a promise is waited for. */
  async evaluate<T>(context: string, expression: string): Promise<T> {
    const answer = await this.send<{ type: string; result: { value: string }; exceptionDetails?: { text: string } }>(
      'script.evaluate',
      {
        expression: `Promise.resolve(${expression}).then((value) => JSON.stringify(value ?? null))`,
        target: { context },
        awaitPromise: true,
      },
    );
    if (answer.type === 'exception') throw new Error(answer.exceptionDetails?.text ?? 'failed in the page');
    return JSON.parse(answer.result.value) as T;
  }

  /**
   * Clicks the add-on's button in the toolbar of the tab in front: the browser's own click, which gives the right to read
   * the tab and lets the sidebar open. Runs in the browser's own window, out of an add-on's reach.
   */
  async clickToolbar(): Promise<void> {
    const { contexts } = await this.send<{ contexts: { context: string }[] }>('browsingContext.getTree', {
      'moz:scope': 'chrome',
    });
    const clicked = await this.send<{ type: string; exceptionDetails?: { text: string } }>('script.evaluate', {
      expression: `(() => {
        const { ExtensionParent } = ChromeUtils.importESModule('resource://gre/modules/ExtensionParent.sys.mjs');
        const { extension } = WebExtensionPolicy.getByID(${JSON.stringify(addOnId)});
        return ExtensionParent.apiManager.global.browserActionFor(extension).triggerAction(window);
      })()`,
      target: { context: contexts[0]?.context },
      awaitPromise: true,
    });
    if (clicked.type === 'exception') throw new Error(clicked.exceptionDetails?.text ?? 'the button was not clicked');
  }

  /** Brings a tab to the front, as a click on it does. */
  async activate(context: string): Promise<void> {
    await this.send('browsingContext.activate', { context });
  }

  async close(): Promise<void> {
    const ended = new Promise((resolve) => this.process.on('exit', resolve));
    this.socket.close();
    this.process.kill();
    await ended;
    await rm(this.profile, { recursive: true, force: true });
  }
}
