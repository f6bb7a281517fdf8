import * as z from 'zod';
import { browser } from '../browser/api';
import { type Pick, type PickField, pickSchema } from '../listing/pick-types';

/**
 * Where fields stand on a site's pages, as the buyer pointed at them. Kept by site; from private windows only in the
 * browser's memory.
 */
const key = (host: string) => `site-picks-${host}`;
const areaFor = (incognito: boolean) => (incognito ? browser.storage.session : browser.storage.local);

export async function readPicks(host: string, incognito: boolean): Promise<Pick[]> {
  const stored = await areaFor(incognito).get(key(host));
  const parsed = z.array(pickSchema).safeParse(stored[key(host)]);
  return parsed.success ? parsed.data : [];
}

/** Remembers a pick; an earlier one of the same field gives way, but photos add up. */
export async function writePick(host: string, incognito: boolean, pick: Pick): Promise<void> {
  const others = (await readPicks(host, incognito)).filter(
    ({ field, selector }) => selector !== pick.selector && (field === 'photo' || field !== pick.field),
  );
  await areaFor(incognito).set({ [key(host)]: [...others, pick] });
}

/** Forgets what was pointed at for a field. */
export async function dropPicks(host: string, incognito: boolean, field: PickField): Promise<void> {
  const others = (await readPicks(host, incognito)).filter((pick) => pick.field !== field);
  await areaFor(incognito).set({ [key(host)]: others });
}

/** The site that an address belongs to, as picks are kept by it. */
export const siteOf = (url: string): string => (URL.canParse(url) ? new URL(url).host : '');
