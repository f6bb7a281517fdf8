import type { CDPSession, Page } from 'playwright-core';
import type { Browser } from './launch';

interface Target {
  targetId: string;
  type: string;
  url: string;
}

/** The browser as a debugger sees it; the tests' page objects stand on it. */
export async function debuggerOf(browser: Browser): Promise<CDPSession> {
  const whole = browser.context.browser();
  if (whole === null) throw new Error('the browser has no debugger');
  return whole.newBrowserCDPSession();
}

/**
 * Clicks the extension's button in the toolbar, with a page's tab in front: the one real gesture that gives the right
 * to read the tab. Chrome DevTools Protocol, Extensions.triggerAction.
 */
export async function clickToolbar(browser: Browser, page: Page): Promise<void> {
  await page.bringToFront();
  const session = await debuggerOf(browser);
  const { targetInfos } = (await session.send('Target.getTargets', { filter: [{ type: 'tab' }] })) as {
    targetInfos: Target[];
  };
  const tab = targetInfos.find(({ url }) => url === page.url());
  if (!tab) throw new Error(`no tab shows ${page.url()}`);
  await session.send('Extensions.triggerAction' as never, { id: browser.id, targetId: tab.targetId } as never);
  await session.detach();
}

/** The real side panel of a tab: it is no page of Playwright's, so it is asked over the protocol. */
export class SidePanel {
  private nextId = 1;
  private readonly waiting = new Map<number, (message: { result?: unknown; error?: { message: string } }) => void>();

  private constructor(
    private readonly session: CDPSession,
    private readonly sessionId: string,
  ) {
    session.on('Target.receivedMessageFromTarget', ({ message, sessionId: from }) => {
      if (from !== sessionId) return;
      const parsed = JSON.parse(message);
      this.waiting.get(parsed.id)?.(parsed);
      this.waiting.delete(parsed.id);
    });
  }

  /** Waits until the panel of a tab is open. */
  static async of(browser: Browser, tabId: number): Promise<SidePanel> {
    const session = await debuggerOf(browser);
    const url = browser.extensionUrl(`sidepanel.html?tab=${tabId}`);
    for (const started = Date.now(); Date.now() - started < 20_000; ) {
      const { targetInfos } = (await session.send('Target.getTargets')) as { targetInfos: Target[] };
      const target = targetInfos.find((one) => one.url === url);
      if (target) {
        const attached = await session.send('Target.attachToTarget', { targetId: target.targetId, flatten: false });
        const panel = new SidePanel(session, attached.sessionId);
        // The target is there before its page: what is asked too early would be lost with the blank page.
        while (!(await panel.evaluate<boolean>(`document.readyState === 'complete' && document.body !== null`))) {
          await new Promise((wake) => setTimeout(wake, 20));
        }
        return panel;
      }
      await new Promise((wake) => setTimeout(wake, 50));
    }
    throw new Error(`the side panel of tab ${tabId} did not open`);
  }

  private async send<T>(method: string, params: object = {}): Promise<T> {
    const id = this.nextId++;
    const answer = new Promise<{ result?: unknown; error?: { message: string } }>((resolve) => {
      this.waiting.set(id, resolve);
    });
    await this.session.send('Target.sendMessageToTarget', {
      sessionId: this.sessionId,
      message: JSON.stringify({ id, method, params }),
    });
    const { result, error } = await answer;
    if (error) throw new Error(`${method}: ${error.message}`);
    return result as T;
  }

  /** The value of an expression inside the panel; a promise is waited for. */
  async evaluate<T>(expression: string): Promise<T> {
    const { result, exceptionDetails } = await this.send<{
      result: { value: T };
      exceptionDetails?: { text: string; exception?: { description?: string } };
    }>('Runtime.evaluate', { expression, returnByValue: true, awaitPromise: true, userGesture: true });
    if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
    return result.value;
  }

  /** Everything that the panel says, its folded parts too. */
  async text(): Promise<string> {
    await this.unfold();
    return this.evaluate('document.body.innerText');
  }

  /** Opens every part that folds. */
  unfold(): Promise<void> {
    return this.evaluate(`void document.querySelectorAll('details').forEach((one) => { one.open = true; })`);
  }

  /** Waits until an expression is true; fails with what the panel shows. */
  async until(expression: string, waitMs = 60_000): Promise<void> {
    const outcome = await this.evaluate<boolean>(`new Promise((settle) => {
      const holds = () => { try { return Boolean(${expression}); } catch { return false; } };
      if (holds()) return settle(true);
      const watcher = new MutationObserver(() => { if (holds()) { watcher.disconnect(); settle(true); } });
      watcher.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
      setTimeout(() => { watcher.disconnect(); settle(false); }, ${waitMs});
    })`);
    if (!outcome) throw new Error(`the panel never came to ${expression}; it shows:\n${await this.text()}`);
  }

  /** Waits until the panel has read the page and every photo. */
  async untilRead(waitMs = 300_000): Promise<void> {
    await this.until(`document.querySelector('[data-stage=done]')`, waitMs);
  }

  /** Clicks the button whose words are these. */
  async click(words: string): Promise<void> {
    const button = `[...document.querySelectorAll('button')].find((one) => one.innerText.trim() === ${JSON.stringify(words)})`;
    await this.until(`${button} && !${button}.disabled`);
    await this.evaluate(`${button}.click()`);
  }

  /** Findings as the screen shows them. */
  findings(): Promise<{ check: string; kind: string; statement: string }[]> {
    return this.evaluate(`[...document.querySelectorAll('.finding')].map((one) => ({
      check: one.dataset.check,
      kind: one.dataset.kind,
      statement: one.querySelector('.finding-statement').textContent,
    }))`);
  }

  /** Texts of the codes that count as read. */
  codes(): Promise<string[]> {
    return this.evaluate(`[...document.querySelectorAll('.stamp-text')].map((one) => one.innerText)`);
  }

  /** The panel as a PNG, as wide as asked and as tall as its content. */
  async picture(width: number): Promise<Uint8Array> {
    const metrics = { width, deviceScaleFactor: 1, mobile: false };
    await this.send('Emulation.setDeviceMetricsOverride', { ...metrics, height: 900 });
    const height = await this.evaluate<number>('document.documentElement.scrollHeight');
    await this.send('Emulation.setDeviceMetricsOverride', { ...metrics, height });
    const { data } = await this.send<{ data: string }>('Page.captureScreenshot', { format: 'png' });
    await this.send('Emulation.clearDeviceMetricsOverride');
    return Buffer.from(data, 'base64');
  }

  async close(): Promise<void> {
    await this.session.detach();
  }
}

/** The whole first step of a user: a click on the toolbar, and the panel that it opens. */
export async function openSidePanel(browser: Browser, page: Page, tabId: number): Promise<SidePanel> {
  await clickToolbar(browser, page);
  return SidePanel.of(browser, tabId);
}
