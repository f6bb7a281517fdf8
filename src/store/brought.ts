import * as z from 'zod';
import { browser } from '../browser/api';

/**
 * Files that were dropped on the panel, on their way to the full page. They lie in the session's memory: nothing of them
 * is saved before they were looked at there.
 */
const broughtSchema = z.array(z.strictObject({ name: z.string(), text: z.string().nullable() }));
/** `text` is null of a file that is too large to be one of ours. */
export type BroughtText = z.infer<typeof broughtSchema>[number];

const key = (id: string) => `brought-${id}`;

export async function keepBrought(texts: readonly BroughtText[]): Promise<string> {
  const id = crypto.randomUUID();
  await browser.storage.session.set({ [key(id)]: texts });
  return id;
}

/** What lies under an id, once: a page that is loaded again opens nothing a second time. */
export async function takeBrought(id: string): Promise<BroughtText[]> {
  const stored = await browser.storage.session.get(key(id));
  await browser.storage.session.remove(key(id));
  const parsed = broughtSchema.safeParse(stored[key(id)]);
  return parsed.success ? parsed.data : [];
}
