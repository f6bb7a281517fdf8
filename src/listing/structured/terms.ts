import type { Provenance } from '../draft';
import type { Condition, Origin } from '../types';
import type { Item } from './item';

/** How far each place of a page is trusted before anything speaks against it. Common practice, no source. */
export const originTrust: Record<Origin, number> = {
  'user-pick': 1,
  'json-ld': 0.9,
  microdata: 0.88,
  rdfa: 0.86,
  'open-graph': 0.7,
  meta: 0.5,
  visible: 0.6,
};

/** Provenance of an item's value; `strength` scales the origin's trust. */
export const fromItem = (
  item: Item,
  strength = 1,
  path = '',
  caveats: readonly string[] = [],
): Provenance & { caveats: string[] } => ({
  origin: item.origin,
  where: path === '' ? item.where : `${item.where} > ${path}`,
  confidence: originTrust[item.origin] * strength,
  caveats: [...item.caveats, ...caveats],
});

/** A schema.org term without its address, in small letters and letters only: "usedcondition". */
export const termName = (text: string): string =>
  text
    .replace(/^.*[/#:]/, '')
    .replace(/[^a-z]/gi, '')
    .toLowerCase();

/** schema.org conditions, with or without address, and the words that shops put there instead. */
export function conditionOf(text: string): Condition | null {
  const name = termName(text);
  if (/^new(withtags|othercondition)?(condition)?$/.test(name)) return 'new';
  if (/^(likenew|asnew|openbox|mint)(condition)?$/.test(name)) return 'as-new';
  if (/^(used|refurbished|preowned|secondhand)(condition)?$/.test(name)) return 'used';
  return /^damaged(condition)?$/.test(name) ? 'damaged' : null;
}
