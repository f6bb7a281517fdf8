import type { Part } from '../claim/types';
import type { Inline } from './page/inline';
import { isStruck } from './page/inline';
import { carrierIn } from './said/carrier';
import { doubtedBy } from './said/doubted';
import type { SaidLayout } from './said/layout-words';
import { isSecondHand } from './said/second-hand';
import type { Doubt, PlaceOnPage, Proposal } from './types';

/** What the readers of one block know of it. */
export interface Context {
  /** Makers that the page tells of; several divide it. */
  makers: readonly string[];
  /** The maker whose section or row this is; undefined when the page has several and none is named here. */
  maker: string | null | undefined;
  /** The model that the heading above names, for a table of one model's facts. */
  heading: string | null;
  /** The words right above a table that its caption leaves out: its heading, and a short paragraph. */
  above: string;
  /** The part of a piece that the heading above names: "Linings". */
  part: Part | null;
  block: number;
  form: PlaceOnPage['form'];
  source: Proposal['source'];
  /** Whether the page is of workshops, whether of where codes sit, whether of running numbers by year, whether of prices, and whether of those of used pieces. */
  about: { plants: boolean; carriers: boolean; numbers: boolean; prices: boolean; secondHand: boolean };
  /** Whose francs the page means (ISO 4217), where it says so. */
  francs: string | null;
  /** What the page says of a footnote's mark. */
  notes: ReadonlyMap<string, string>;
  /** The form of a code that the page told last. */
  earlier: SaidLayout | null;
  /** What each capital of a notation stands for, where the page says. */
  legend: ReadonlyMap<string, string>;
}

/** A proposal of some kind without what all have in common. */
type Own<T> = T extends unknown
  ? Omit<T, 'maker' | 'words' | 'at' | 'also' | 'source' | 'doubts' | 'standing' | 'ticked' | 'condition'>
  : never;
export type OwnFields = Own<Proposal>;

/** What the reader of an entry or a row says, whose words and maker are known. */
export type Say = (own: OwnFields, doubts?: readonly (Doubt | false)[]) => Proposal;

export interface Said {
  words: string;
  selector: string;
  doubts?: readonly (Doubt | false | null | undefined)[];
  maker?: string | null | undefined;
}

/** Makes a proposal of what was read; it is ticked when nothing speaks against it. */
export function propose(context: Context, own: OwnFields, said: Said): Proposal {
  const maker = said.maker !== undefined ? said.maker : context.maker;
  const doubts = (said.doubts ?? []).filter((doubt): doubt is Doubt => typeof doubt === 'string');
  if (maker === undefined) doubts.push('which-maker');
  const on = own.kind === 'carrier' ? (own.on ?? carrierIn(own.where)) : null;
  return {
    ...own,
    ...(on && { on }),
    ...(own.kind === 'price' && { condition: isSecondHand(said.words) || context.about.secondHand ? 'used' : 'new' }),
    maker: maker ?? null,
    words: said.words,
    at: { selector: said.selector, block: context.block, form: context.form },
    source: context.source,
    doubts: [...new Set(doubts)],
    ticked: doubts.length === 0,
  } as Proposal;
}

/** What striking out and footnotes say against words: taken back or disputed. */
export function doubtsOf(said: readonly Inline[], context: Context): Doubt[] {
  const struck = said.length > 0 && said.every(isStruck);
  const noted = said.flatMap(({ marks }) => marks.flatMap((mark) => context.notes.get(mark) ?? []));
  return [...(struck ? (['withdrawn'] as const) : []), ...noted.flatMap(doubtedBy)];
}

/** Says what an entry tells, in the words of the whole, with what they and the entry's body say against it. */
export function sayerOf(whole: Inline, body: string, context: Context): Say {
  const noted = [...doubtsOf([whole], context), ...doubtedBy(body)];
  return (own, doubts = []) =>
    propose(context, own, { words: whole.text, selector: whole.selector, doubts: [...noted, ...doubts] });
}
