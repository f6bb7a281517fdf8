import { findReturns, findShipping, foldWords } from '../text';
import { type Block, headingsOf } from './page/blocks';
import { textOfBlocks } from './page/text-of';
import type { Proposal, ProposalKind } from './types';
import { tellingFinder, wholeWords } from './words';

const tells = tellingFinder('tells');
const tellsInTitle = tellingFinder('tells-in-title');
const offers = tellingFinder('offering');
const goods = tellingFinder('heading-thing', 'bag-place', 'stamping', 'part-lining');
const bags = tellingFinder('bag-noun', 'bag-place', 'stamping', 'part-lining');
/** Postcodes, plates of vehicles, numbers of books: codes that no maker stamps. */
const otherCodes = tellingFinder('other-codes');

const workshops = [...wholeWords('plant')].filter((word) => /^\p{L}{4,}$/u.test(word));
/** "Workshops of …", "Werkskürzel": in German and Dutch one word of both. */
const namesWorkshops = (heads: string): boolean =>
  foldWords(heads)
    .text.split(/[^\p{L}]{1,80}/u)
    .some((word) => workshops.some((noun) => word.startsWith(noun)));

/** What of a page is looked at to tell whether it offers a thing: its head is enough. */
const longestLook = 20_000;

export interface Telling {
  /** Whether title or headings say that codes, models or dates are told. */
  heading: boolean;
  offersInHeading: boolean;
  offersInText: boolean;
  /** Whether it speaks of things that makers of leather goods make, or of their parts. */
  ofGoods: boolean;
  /** Whether one passage alone speaks of them, and no title or heading; of a bare table of codes nothing of the kind is known. */
  ofGoodsInPassing: boolean;
  /** Whether no passage, title or heading speaks of them. */
  ofNoGoods: boolean;
  /** Whether title, headings or captions speak of workshops. */
  ofWorkshops: boolean;
  /** Whether title or first heading are of codes of another kind. */
  ofOtherCodes: boolean;
}

/** "Postage to Leeds would be about £6": one of many who answer each other asks for it, or offers. */
const isTalk = (blocks: readonly Block[]): boolean =>
  blocks.filter((block) => block.kind === 'paragraph' && block.quoted).length > 0;
const ships = (text: string): boolean => findShipping(text.slice(0, longestLook)).length > 0;

/** What speaks for a page that tells of a maker, and for one that offers a piece. */
export function readTelling(title: string, blocks: readonly Block[]): Telling {
  const headings = headingsOf(blocks);
  const captions = blocks.flatMap((block) => (block.kind === 'table' ? [block.caption] : []));
  const about = [title, ...headings, ...captions].join('\n').slice(0, longestLook);
  const texts = blocks.flatMap((block) => {
    if (block.kind === 'paragraph') return [block.words.text];
    return block.kind === 'list' ? block.items.map(({ text }) => text) : [];
  });
  const body = texts.join('\n').slice(0, longestLook);
  const ofBags = (text: string) => bags(text).length > 0;
  const inHeads = ofBags(about);
  return {
    ofGoodsInPassing: !inHeads && texts.filter(ofBags).length === 1,
    ofNoGoods: !inHeads && !texts.some(ofBags),
    heading: tells(about).length > 0 || tellsInTitle(`${title}\n${headings[0] ?? ''}`.slice(0, 600)).length > 0,
    ofWorkshops: namesWorkshops(about),
    ofOtherCodes: otherCodes(`${title}\n${headings[0] ?? ''}`.slice(0, 600)).length > 0,
    offersInHeading: offers(about).length > 0,
    ofGoods: goods(`${title}\n${textOfBlocks(blocks)}`).length > 0 || namesWorkshops(about),
    offersInText:
      [offers, findReturns].some((find) => find(body).length > 0) ||
      (findShipping(body).length > 0 && !(isTalk(blocks) && texts.filter(ships).length === 1)),
  };
}

/** Fewer than this on a page that sells, or without a heading that says so, are a mention. */
const fewest = 3;
const fewestRows = 2;
const ofCodes = new Set<ProposalKind>(['plant', 'code-system', 'example', 'year-letter', 'serial']);

/** A shop that explains codes: several forms of them, or one with the workshops behind it. No offer tells that of its piece. */
function isWholeSystem(found: readonly Proposal[]): boolean {
  const count = (kind: ProposalKind) => found.filter((one) => one.kind === kind && one.doubts.length === 0).length;
  const systems = count('code-system');
  return systems > 1 || (systems > 0 && count('plant') >= fewest);
}

/** So many things of more kinds than one, and of pieces among them, are told and not mentioned. */
const fewestOfKinds = 3;
const isVaried = (found: readonly Proposal[]): boolean =>
  found.length >= fewestOfKinds &&
  new Set(found.map(({ kind }) => kind)).size > 1 &&
  found.some(({ kind }) => kind === 'model' || kind === 'construction');

/**
 * What a page tells, and nothing of what it only mentions. A page that offers a piece names its code, its size and its
 * maker; a shop may tell of codes as well. So where something is for sale, and where no heading says that codes are
 * told, it takes several of them: of codes anywhere, of models and materials in one table or list, or of both. Letters
 * beside towns are nobody's codes on a page that speaks of no bag and no part of one.
 */
export function whatIsTold(
  found: readonly Proposal[],
  { heading, offersInText, ofGoods, ofGoodsInPassing, ofNoGoods, ofWorkshops }: Telling,
): Proposal[] {
  // One thing said of nobody's codes is in passing, whatever the heading says.
  if (found.length === 1 && found[0]!.maker === null) return [];
  // Letters beside towns of nobody, where no head speaks of workshops: courses, lines, halls.
  if (!ofWorkshops && found.every(({ kind, maker }) => kind === 'plant' && maker === null)) return [];
  const ofNobody = found.every(({ maker }) => maker === null);
  // Codes of nobody on a page that names a bag once: of parcels, of bottles.
  if (ofGoodsInPassing && ofNobody) return [];
  // Forms and places of nobody's codes on a page that names none: of books, of cheeses.
  if (
    ofNoGoods &&
    ofNobody &&
    (['plant', 'code-system'] as const).every((kind) => found.some((one) => one.kind === kind))
  )
    return [];
  if (heading) return !offersInText || found.length >= fewest ? [...found] : [];
  if (offersInText) return isWholeSystem(found) ? [...found] : [];
  // How codes are built, and when or with an example, is never said in passing.
  if (found.some(({ kind }) => kind === 'code-system')) return [...found];
  if (found.every(({ kind }) => kind === 'plant') && !ofGoods) return [];
  const codes = found.filter(({ kind }) => ofCodes.has(kind)).length;
  if (codes >= fewest || (ofGoods && isVaried(found))) return [...found];
  const perBlock = new Map<number, number>();
  for (const { at } of found) if (at.form !== 'prose') perBlock.set(at.block, (perBlock.get(at.block) ?? 0) + 1);
  return found.filter(({ at }) => (perBlock.get(at.block) ?? 0) >= (at.form === 'table' ? fewestRows : fewest));
}
