import * as z from 'zod';
import { browser } from '../browser/api';

/**
 * The photos of the listing last read in a tab. Kept in the browser's memory (storage.session), so that a worker that
 * was stopped finds it again and nothing reaches the disk. A photo is asked for by its id and looked up here: no
 * message can name an address.
 */
const pageRecordSchema = z.strictObject({
  url: z.string(),
  photos: z.array(z.strictObject({ id: z.string(), urls: z.array(z.string()) })),
});
export type PageRecord = z.infer<typeof pageRecordSchema>;

const key = (tabId: number) => `page-${tabId}`;

export const writePageRecord = (tabId: number, record: PageRecord): Promise<void> =>
  browser.storage.session.set({ [key(tabId)]: record });

export async function readPageRecord(tabId: number): Promise<PageRecord | null> {
  const stored = await browser.storage.session.get(key(tabId));
  const parsed = pageRecordSchema.safeParse(stored[key(tabId)]);
  return parsed.success ? parsed.data : null;
}

export const dropPageRecord = (tabId: number): Promise<void> => browser.storage.session.remove(key(tabId));
