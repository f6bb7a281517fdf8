import { firstChild, invoke, property, textContent } from '../listing/page/dom';
import { unknownPlace } from '../place';
import { readEntry, splitEntry } from './entry';
import { headsOf, makerOfHeading, makersNamed, type NamedMakers } from './name';
import { type Block, headingsOf, isOwnHeading, readBlocks } from './page/blocks';
import type { Inline } from './page/inline';
import { linesOf, notesOf, piecesOfList, unbroken } from './page/lines';
import type { Context } from './propose';
import { ProseReader } from './prose/read-prose';
import type { Section } from './prose/systems';
import { readLegend, readNotation } from './said/layout';
import { partNamed } from './said/part';
import { countryAlone } from './said/place';
import { isSecondHand } from './said/second-hand';
import { withoutPeriods } from './said/used-text';
import { isHeadingSize, isOfPeriod, speaksOfCodes } from './section';
import { settle } from './settle';
import { readTable } from './table/read-table';
import { readTelling, whatIsTold } from './tells';
import type { Proposal } from './types';
import { tellingFinder, wholeWords } from './words';

export { draftWith } from './draft';
export { pageOfText } from './page/pasted';
export { piecesOf } from './pieces';
export type { Doubt, Proposal, ProposalKind } from './types';
export { proposalSchema } from './types';

/** Where a page was read, and on which day (ISO 8601); both go with every proposal as its source. */
export interface PageRead {
  address: string;
  day: string;
  /** The maker of the listing that it is read for, where one is known. */
  known?: string | undefined;
}

const where = tellingFinder('column-where', 'sits', 'sits-on');
const codeWords = tellingFinder('code');
const numbers = tellingFinder('numbers-by-year');
const prices = tellingFinder('new-price', 'column-price', 'cost');
const headingWords = wholeWords('heading');

/** A paragraph no longer than this may be one entry of a list that the page made of paragraphs. */
const longestEntry = 160;

/** A page's own words for a legend and for makers: enough of them, so that the work keeps to the page's length. */
const longestLook = 60_000;

/**
 * What a page that tells of makers proposes for their files: each entry with its exact words, its place, and the page as
 * its source. Nothing where the page merely mentions codes or offers a piece. The work grows with the page alone.
 */
export const takeFromPage = (document: Document, page: PageRead): Proposal[] => readPage(document, page).proposals;

/** What a page proposes, and whom it seems to be of: where that is not sure, the buyer is asked. */
export function readPage(
  document: Document,
  { address, day, known }: PageRead,
): { proposals: Proposal[]; named: NamedMakers } {
  const body = property<Element | null>(document, 'body');
  // A page may leave its outer tags out, and not every parser puts them in.
  const blocks = readBlocks(body && firstChild(body) ? body : document);
  const title = titleOf(document);
  const telling = readTelling(title, blocks);
  const prose = blocks.filter((block) => block.kind !== 'table' && !(block.kind === 'heading' && isOwnHeading(block)));
  const named = makersNamed(headsOf(document, title, blocks), textOf(prose), known);
  if (telling.offersInHeading || telling.ofOtherCodes) return { proposals: [], named };
  const found = new PageReader(title, blocks, { address, day }, named).read();
  return { proposals: whatIsTold(found, telling), named };
}

function titleOf(document: Document): string {
  const element = invoke<Element | null>(document, 'querySelector', 'title');
  return element ? textContent(element).trim().slice(0, 300) : '';
}

const textsOf = (block: Block): Inline[] => {
  if (block.kind === 'heading' || block.kind === 'paragraph') return [block.words];
  if (block.kind === 'list') return block.items;
  if (block.kind === 'definitions') return block.pairs.flatMap(({ term, words }) => [term, words]);
  return block.rows.flatMap((row) => row.flatMap(({ own, words }) => (own && words ? [words] : [])));
};

/** The words of blocks, as far as they are looked at. */
function textOf(blocks: readonly Block[]): string {
  const texts: string[] = [];
  let length = 0;
  for (const block of blocks) {
    if (length > longestLook) break;
    for (const { text } of textsOf(block)) texts.push(text.slice(0, longestLook));
    length += texts.at(-1)?.length ?? 0;
  }
  return texts.join('\n').slice(0, longestLook);
}

class PageReader {
  private readonly found: Proposal[] = [];
  private readonly makers: string[];
  private readonly legend: Map<string, string>;
  private readonly notes: Map<string, string>;
  private readonly about: Context['about'];
  private readonly prose: ProseReader;
  private maker: string | null | undefined;
  private heading: string | null = null;
  private part: Context['part'] = null;
  /** The period that the heading above is, and the notation beside it. */
  private section: Section | null = null;

  constructor(
    title: string,
    private readonly blocks: readonly Block[],
    private readonly source: Proposal['source'],
    named: NamedMakers,
  ) {
    const headings = headingsOf(blocks);
    const body = textOf(blocks);
    this.makers = named.makers;
    this.legend = readLegend(
      blocks
        .flatMap((block) => (block.kind === 'paragraph' ? [block.words.text] : []))
        .join('\n')
        .slice(0, longestLook),
    );
    this.notes = notesOf(blocks);
    const about = `${title}\n${headings[0] ?? ''}`;
    this.about = {
      carriers: codeWords(about).length > 0 && where(about).length > 0,
      numbers: numbers(about).length > 0,
      prices: prices(about).length > 0,
      secondHand: isSecondHand(about),
    };
    this.maker = this.makers.length > 1 ? undefined : (this.makers[0] ?? null);
    this.prose = new ProseReader(this.makers, source.day, body);
  }

  read(): Proposal[] {
    for (const [at, block] of this.blocks.entries()) this.take(block, at);
    return settle(this.found, this.prose.retractions, this.prose.beginnings);
  }

  private context(block: number, form: Context['form']): Context {
    const { makers, maker, heading, part, source, about, notes, legend } = this;
    const above = this.above(block);
    return { about, makers, maker, heading, above, part, block, form, source, notes, legend };
  }

  private above(at: number): string {
    const words: string[] = [];
    for (let back = at - 1; back >= 0 && back >= at - 2; back -= 1) {
      const block = this.blocks[back]!;
      if (block.kind !== 'paragraph' && block.kind !== 'heading') break;
      if (block.words.text.length <= longestEntry) words.push(block.words.text);
      if (block.kind === 'heading') break;
    }
    return words.join(' ');
  }

  private take(block: Block, at: number): void {
    if (block.kind === 'heading') this.heads(block.words, at);
    else if (block.kind === 'table') this.found.push(...readTable(block, this.context(at, 'table'), this.source.day));
    else if (block.kind === 'list') for (const item of block.items) this.item(item, at, countryAlone(block.above));
    else if (block.kind === 'definitions') for (const { term, words } of block.pairs) this.pair(term, words, at);
    else this.paragraph(block.words, at);
  }

  private heads(words: Inline, at: number): void {
    this.enter(words.text);
    if (speaksOfCodes(words.text)) this.prose.speakOfCodes();
    // "Before 1964: nothing at all" is told by its heading alone.
    const read = isHeadingSize(words.text) ? this.entry(words, at, 'prose') : null;
    this.found.push(...(read ?? []).filter(({ kind }) => kind === 'stamped'));
  }

  private enter(heading: string): void {
    const maker = makerOfHeading(heading, this.makers);
    if (maker !== null && makersIn(heading, this.makers) === 1) this.maker = maker;
    else if (this.makers.length > 1 && maker !== null) this.maker = undefined;
    const names = heading.split(' ').every((word) => !headingWords.has(word.toLowerCase()));
    const { text, periods } = withoutPeriods(heading);
    const layout = readNotation(text.replace(/[()[\],:–—-]{1,9}/g, ' ').trim(), this.legend);
    const [period, ...more] = periods;
    const told = period && more.length === 0 && (layout !== null || isOfPeriod(heading, period));
    this.section = told ? { period, layout } : null;
    this.part = periods.length === 0 ? partNamed(heading) : null;
    this.heading = maker === null && names && heading.length <= 40 ? heading : null;
  }

  /** `country` is the one that the list hangs under: its towns lie there. */
  private item(item: Inline, at: number, country: string | null): void {
    const read = this.entry(item, at);
    if (read)
      this.found.push(
        ...read.map((one) =>
          country !== null && one.kind === 'plant' && one.place === unknownPlace ? { ...one, place: country } : one,
        ),
      );
    else this.paragraph(item, at);
  }

  private entry(item: Inline, at: number, form: Context['form'] = 'list'): Proposal[] | null {
    const entry = splitEntry(item);
    return entry && readEntry(entry, this.context(at, form), this.source.day);
  }

  private pair(term: Inline, words: Inline, at: number): void {
    const struck = [
      ...term.struck,
      ...words.struck.map(({ start, end }) => ({
        start: start + term.text.length + 2,
        end: end + term.text.length + 2,
      })),
    ];
    const whole = {
      text: `${term.text}: ${words.text}`,
      struck,
      marks: [...term.marks, ...words.marks],
      selector: words.selector,
    };
    const entry = { head: term.text, body: words.text, whole };
    const read = readEntry(entry, this.context(at, 'definition'), this.source.day);
    if (read) this.found.push(...read);
    else this.paragraph(words, at);
  }

  private paragraph(words: Inline, at: number): void {
    const lines = linesOf(words);
    const read = lines.length > 1 ? lines.map((line) => this.entry(line, at)) : [];
    // Lines that are entries are a list, however the page made it.
    if (read.filter((one) => one !== null).length >= Math.max(2, lines.length / 2)) {
      for (const [index, one] of read.entries())
        this.found.push(...(one ?? this.prose.read(lines[index]!, this.context(at, 'prose'), this.found.length)));
      return;
    }
    // "V: Vienna; M: Millau (1983–2001)".
    const pieces = piecesOfList(words).map((piece) => this.entry(piece, at));
    if (pieces.length > 1 && pieces.every((one) => one !== null)) {
      this.found.push(...pieces.flat());
      return;
    }
    const short = words.text.length <= longestEntry ? this.entry(words, at) : null;
    if (short) {
      this.found.push(...short);
      return;
    }
    const whole = { ...words, text: unbroken(words.text) };
    this.found.push(...this.prose.read(whole, this.context(at, 'prose'), this.found.length, this.section));
  }
}

const makersIn = (heading: string, makers: readonly string[]): number =>
  makers.filter((maker) => heading.toLowerCase().includes(maker.toLowerCase())).length;
