import type { Page } from 'playwright-core';
import type { PhotoRead } from '../../src/photo';
import { photoReadSchema } from '../../src/stamp';
import type { Browser } from './launch';

/** A page of the extension from which tests ask the reader, with the messages that the panel sends. */
export async function openAsking(browser: Browser): Promise<Page> {
  const page = await browser.context.newPage();
  await page.goto(browser.extensionUrl('sidepanel.html'));
  return page;
}

/** Has the extension read a photo; a photo that could not be taken in is an unread one, with the reader's problem. */
export async function readInExtension(page: Page, photoId: string, bytes: Uint8Array): Promise<PhotoRead> {
  const reply = await page.evaluate(
    async ([id, base64]) => {
      const ask = (to: string, name: string, input: object) =>
        chrome.runtime.sendMessage({ tellstamp: 1, to, name, input }) as Promise<unknown>;
      await ask('background', 'reader.open', {});
      const adjustment = { crop: null, turn: 0, invert: false };
      const file = URL.createObjectURL(await (await fetch(`data:;base64,${base64}`)).blob());
      return ask('reader', 'photo.read', { photoId: id, file, adjustment });
    },
    [photoId, Buffer.from(bytes).toString('base64')] as const,
  );
  const answer = reply as { ok: boolean; value?: { read: unknown }; problem?: unknown };
  return photoReadSchema.parse(answer.ok ? answer.value?.read : { state: 'unread', photoId, problem: answer.problem });
}
