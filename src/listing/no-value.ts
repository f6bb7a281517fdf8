import { labelOf } from '../text/label';
import { isMenuWord } from '../text/offer-words';
import type { Draft } from './draft';
import type { Candidate, Field } from './types';

/** What a template leaves where it was given nothing, and what shops write where a maker is asked for and none is known. */
const unfilled =
  /\{\{|\}\}|\$\{|\{%|<%|\[\[|%[a-z_]{3,}%|^\s*(?:null|undefined|nan|n\/?a|none|unknown|default|test|brand|brand name|unbranded|no brand|generic|other|does not apply|-+|\.+|keine marke|ohne marke|markenlos|marke|sans marque|marque|autre|senza marca|marca|sin marca|geen merk|merkloos|merk|ノーブランド|なし)\s*$/i;

const kept = <T extends Candidate<string>>(field: T[], isValue: (text: string) => boolean): T[] =>
  field.filter(({ value, origin }) => origin === 'user-pick' || isValue(value));

const isFilled = (text: string): boolean => !unfilled.test(text);
/** A heading of the page or a word of its menu is nobody's name and no place. */
const names = (text: string): boolean => isFilled(text) && labelOf(text) === null && !isMenuWord(text);

/** Leaves out what stands in a field's place and is no value of it. */
export function dropNoValues(draft: Draft): void {
  for (const name of ['maker', 'model', 'itemCode', 'colour', 'material'] as const)
    draft[name] = kept(draft[name], isFilled);
  draft.title = kept(draft.title, (text) => !/\{\{|\}\}|\$\{|<%/.test(text));
  draft.seller.name = kept(draft.seller.name, names);
  draft.seller.place = kept(draft.seller.place, names);
  const title = withoutHiddenStart(draft.title, draft.maker);
  if (title) draft.title.push(title);
}

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();
const mostHidden = 30;
const leastTitle = 8;

/**
 * A heading may begin with words for screen readers ("Details about") that a saved page does not tell from those seen.
 * Where all else that names the page is the heading's end, that end is the title. A maker's name is no such start.
 */
function withoutHiddenStart(titles: Field<string>, makers: Field<string>): Candidate<string> | null {
  const heading = titles.find(({ origin, where }) => origin === 'visible' && where !== 'title');
  const named = titles.filter((one) => one !== heading && one.origin !== 'user-pick');
  const others = named.map(({ value }) => plain(value));
  if (!heading || others.length === 0) return null;
  const whole = plain(heading.value);
  const ends = others.filter(
    (other) =>
      other.length >= leastTitle && other.length < whole.length && whole.toLowerCase().endsWith(other.toLowerCase()),
  );
  const [end] = ends;
  if (!end || ends.length < others.length || new Set(ends.map((one) => one.toLowerCase())).size > 1) return null;
  const start = plain(whole.slice(0, -end.length)).toLowerCase();
  // What a tab's title leaves out may be half of the name.
  if (named.every(({ origin }) => origin === 'meta') && start.length * 3 > end.length * 2) return null;
  if (start.length > mostHidden || makers.some(({ value }) => plain(value).toLowerCase() === start)) return null;
  return {
    ...heading,
    value: whole.slice(-end.length),
    confidence: Math.min(1, heading.confidence + 0.01),
    words: whole,
  };
}
