import sharp from 'sharp';
import { expect, it } from 'vitest';
import { launch } from './launch';
import { openAsking } from './reader-messages';

it('a reader that is asked for twice at once hears the first photo after either answer', async () => {
  const browser = await launch();
  try {
    const page = await openAsking(browser);
    const photo = sharp({ create: { width: 320, height: 240, channels: 3, background: '#8a5a2b' } });
    const replies = await page.evaluate(
      async (base64) => {
        const file = URL.createObjectURL(await (await fetch(`data:;base64,${base64}`)).blob());
        const ask = (to: string, name: string, input: object) =>
          chrome.runtime.sendMessage({ tellstamp: 1, to, name, input }) as Promise<{ ok: boolean } | undefined>;
        const adjustment = { crop: null, turn: 0, invert: false };
        const openAndRead = async (photoId: string) => {
          await ask('background', 'reader.open', {});
          return ask('reader', 'photo.read', { photoId, file, adjustment });
        };
        return Promise.all([openAndRead('p1'), openAndRead('p2')]);
      },
      (await photo.jpeg().toBuffer()).toString('base64'),
    );
    expect(replies.map((reply) => reply?.ok)).toEqual([true, true]);
  } finally {
    await browser.close();
  }
});
