import * as z from 'zod';
import { browser } from '../../browser/api';
import { readFrameText } from './frame-text';

const mostFrames = 30;
const mostLetters = 20_000;
const mostLettersOfAll = 100_000;
const mostElements = 20_000;
const waitMs = 1_500;

const frameTextSchema = z.strictObject({ address: z.string().max(4096), text: z.string().max(mostLetters) });

/**
 * Words of the frames of a tab that the user's rights reach, by the frame's address. The browser leaves out the frames
 * of hosts that were not granted; the reader says of those that they were not read. Never fails: a frame that cannot
 * be reached, or does not answer in time, only stays unread.
 */
export async function readFrameTexts(tabId: number): Promise<Record<string, string>> {
  const asked = browser.scripting
    .executeScript({
      target: { tabId, allFrames: true },
      func: readFrameText,
      args: [mostLetters, mostElements],
      // A frame that never finishes loading would keep all the others waiting.
      injectImmediately: true,
    })
    .catch(() => []);
  const late = new Promise<[]>((resolve) => setTimeout(resolve, waitMs, []));
  return frameTextsOf(await Promise.race([asked, late]));
}

/** The texts that frames gave, checked and bounded; two frames that differ under one address give none. */
export function frameTextsOf(results: readonly { frameId: number; result?: unknown }[]): Record<string, string> {
  const texts = new Map<string, string | null>();
  let left = mostLettersOfAll;
  for (const { result } of results.filter((one) => one.frameId !== 0).slice(0, mostFrames)) {
    const parsed = frameTextSchema.safeParse(result);
    if (!parsed.success || !/^https?:/.test(parsed.data.address)) continue;
    const { address, text } = parsed.data;
    const known = texts.get(address);
    if (known !== undefined) {
      if (known !== text) texts.set(address, null);
      continue;
    }
    texts.set(address, text.slice(0, left));
    left -= Math.min(left, text.length);
  }
  return Object.fromEntries([...texts].filter((one): one is [string, string] => (one[1] ?? '') !== ''));
}
