import * as z from 'zod';
import { browser } from '../browser/api';
import { proposalSchema } from '../take';

/**
 * What a page proposed, on its way from the panel to the full page. It lies in the session's memory: it is gone when the
 * browser is closed, and nothing of it is saved before the buyer opens a draft.
 */
const takenSchema = z.strictObject({
  title: z.string(),
  address: z.string(),
  day: z.string(),
  /** The tab that shows the page; null where it was brought in. */
  tab: z.number().int().nullable(),
  proposals: z.array(proposalSchema),
  /** Where the page does not say plainly of whom it tells: the likeliest name, and others that come into question. */
  open: z.strictObject({ likely: z.string(), others: z.array(z.string()) }).nullable(),
  /** Several makers that the page seems to be of, where it may be of one alone; empty where it is sure, or names one. */
  among: z.array(z.string()),
});
export type Taken = z.infer<typeof takenSchema>;

const forKey = 'take-for';

/** Keeps the maker of the listing that a page is looked for, until the browser is closed; an empty name forgets the one before. */
export const keepWanted = (maker: string): Promise<void> => browser.storage.session.set({ [forKey]: maker });

/** The maker of the listing that was last looked at for a page; empty where there was none. */
export async function readWanted(): Promise<string> {
  const { [forKey]: maker } = await browser.storage.session.get(forKey);
  return typeof maker === 'string' ? maker : '';
}

const key = (id: string) => `taken-${id}`;

/** Keeps it under a new id, in place of what was there before: one page is looked through at a time. */
export async function keepTaken(taken: Taken): Promise<string> {
  const id = crypto.randomUUID();
  const present = await browser.storage.session.get(null);
  const earlier = Object.keys(present).filter((name) => name.startsWith('taken-'));
  await browser.storage.session.remove(earlier);
  await browser.storage.session.set({ [key(id)]: taken });
  return id;
}

/** What lies under an id; null when the browser was closed since. */
export async function readTaken(id: string): Promise<Taken | null> {
  const stored = await browser.storage.session.get(key(id));
  const parsed = takenSchema.safeParse(stored[key(id)]);
  return parsed.success ? parsed.data : null;
}
