import { unknownPlace } from '../place';
import { type Entry, readEntry, splitEntry } from './entry';
import { codeOfEntries } from './entry-code';
import { timeOfLinked } from './entry-era';
import { constructionOf, readOfPart } from './entry-part';
import { positionsOf } from './entry-positions';
import type { HeadingAbove } from './heading-above';
import type { NamedMakers } from './name';
import { withoutAnswerSign } from './page/answer';
import type { Block } from './page/blocks';
import type { Cell } from './page/grid';
import { afterHead, type Inline, plainWords } from './page/inline';
import { linesOf, piecesOfList, unbroken } from './page/lines';
import { rowsOfEntries } from './page/rows-of-entries';
import { textOfBlocks } from './page/text-of';
import { longestEntry, PageContext } from './page-context';
import { type Context, sayerOf } from './propose';
import { withOrders } from './prose/orders';
import { ProseReader } from './prose/read-prose';
import { withItsMonths } from './said/layout';
import { monthLettersTold } from './said/month-letters';
import { partNamed } from './said/part';
import { readPeriods } from './said/period';
import { countryAlone, countryOfAll } from './said/place';
import { readSizes } from './said/size';
import { isPeriod } from './said/used-text';
import { isHeadingSize, speaksOfCodes } from './section';
import { settle } from './settle';
import { areFacts, readFacts } from './table/facts';
import { readTable } from './table/read-table';
import type { Proposal } from './types';

/** Reads a page's blocks in order; what stands above one tells what it is of. */
export class PageReader {
  private readonly found: Proposal[] = [];
  private readonly prose: ProseReader;
  private readonly firstHeading: number;
  private readonly context: PageContext;
  private readonly heading: HeadingAbove;
  /** The letters that the page gives the months. */
  private readonly months: string | null;

  constructor(
    title: string,
    private readonly blocks: readonly Block[],
    private readonly source: Proposal['source'],
    { makers }: NamedMakers,
  ) {
    this.firstHeading = blocks.findIndex(({ kind }) => kind === 'heading');
    const body = textOfBlocks(blocks);
    this.months = monthLettersTold(body);
    this.context = new PageContext(title, body, blocks, source, makers);
    this.heading = this.context.heading;
    this.prose = new ProseReader(makers, source.day, body);
  }

  read(): Proposal[] {
    let reached = 0;
    for (const [at, block] of this.blocks.entries()) {
      if (at < reached) continue;
      const count = this.found.length;
      this.take(block, at);
      if (block.kind === 'heading') reached = this.card(block.words.text, at);
      this.context.tell(this.found.slice(count));
      if (this.heading.country !== null) this.placeIn(this.heading.country, count);
    }
    const { retractions, beginnings, conceded, times, byExamples, orders } = this.prose;
    const found = withoutKnown(this.found, byExamples).map((one) =>
      times.has(one) ? ({ ...one, ...times.get(one) } as Proposal) : one,
    );
    return settle(withOrders(found, orders), retractions, beginnings, conceded).map((one) =>
      one.kind === 'code-system' ? { ...one, layout: withItsMonths(one.layout, one.examples, this.months) } : one,
    );
  }

  /**
   * The size, the years and the parts of what a heading names, below it, each a paragraph of its own: reads them and gives
   * where they end; the heading's own place where it heads no such card.
   */
  private card(name: string, at: number): number {
    const isName = name.length <= longestName && !/[?:.!]/.test(name) && readPeriods(name).length === 0;
    if (!isName || this.firstHeading === at) return at;
    const entries: Entry[] = [];
    for (const block of this.blocks.slice(at + 1, at + 1 + mostOnCard)) {
      if (block.kind !== 'paragraph' || block.words.text.length > longestEntry) break;
      const entry = factOfLine(block.words);
      if (entry === null) break;
      entries.push(entry);
    }
    const told = entries.length < 2 ? null : this.facts(entries, name, at + 1, 'list');
    if (!told?.some(({ kind }) => kind === 'model')) return at;
    this.found.push(...told);
    return at + 1 + entries.length;
  }

  /** Towns told under the heading of a country lie there. */
  private placeIn(country: string, from: number): void {
    for (let at = from; at < this.found.length; at += 1) this.found[at] = placedIn(country, this.found[at]!);
  }

  private take(block: Block, at: number): void {
    if (block.kind === 'heading') this.heads(block.words, at);
    else if (block.kind === 'table') this.table(block, at);
    else if (block.kind === 'list') this.list(block, at);
    else if (block.kind === 'definitions') this.definitions(block, at);
    else {
      const before = this.blocks[at - 1];
      const asked = before?.kind === 'heading' || before?.kind === 'paragraph' ? before.words.text : '';
      this.paragraph(withoutAnswerSign(block.words, asked), at);
      const above = this.blocks[at - 1];
      if (above?.kind === 'heading' && above.own) this.heading.leave();
    }
  }

  private table(table: Extract<Block, { kind: 'table' }>, at: number): void {
    const entries = table.rows.map(entryOfRow);
    const rows = entries.includes(null) ? table.rows : this.withoutCode(table.rows, entries, at, 'table');
    this.found.push(...readTable({ ...table, rows }, this.context.of(at, 'table'), this.source.day));
  }

  private heads(words: Inline, at: number): void {
    this.heading.enter(words.text);
    if (speaksOfCodes(words.text)) this.prose.speakOfCodes();
    this.prose.show(words.text);
    // "Before 1964: nothing at all" is told by its heading alone.
    const read = isHeadingSize(words.text) ? this.entry(words, at, 'prose') : null;
    this.found.push(...(read ?? []).filter(({ kind }) => kind === 'stamped'));
  }

  private list({ items, above }: Extract<Block, { kind: 'list' }>, at: number): void {
    const told = this.underAbove(items, above, at) ?? this.facts(items.map(splitEntry), above, at, 'list');
    if (told) {
      this.found.push(...told);
      return;
    }
    const entries = linkedEntries(items.map(splitEntry));
    const left = this.withoutCode(items, entries, at, 'list');
    const entryOf = new Map(items.map((item, index) => [item, entries[index]!]));
    const read = left.map((item) => this.entry(item, at, 'list', entryOf.get(item)));
    const rows = read.every((one) => one === null) ? this.rows(left, at, 'list') : null;
    if (rows) this.found.push(...rows);
    else for (const [index, item] of left.entries()) this.item(item, read[index]!, at, countryAlone(above));
  }

  /** Entries none of which tells anything by itself, as a table's rows: what each of their pieces is, all tell together. */
  private rows(entries: readonly Inline[], at: number, form: Context['form']): Proposal[] | null {
    const rows = rowsOfEntries(entries);
    if (!rows) return null;
    const found = readTable({ rows, caption: '' }, this.context.of(at, form), this.source.day);
    return found.length > 0 ? found : null;
  }

  /** Entries under a period are what it tells: how codes were built, that there were none. */
  private underAbove(items: readonly Inline[], above: string, at: number): Proposal[] | null {
    if (items.length === 0 || !isHeadingSize(above) || !isPeriod(above)) return null;
    const parts = items.map((item) => this.partUnder(item, above, at));
    const found = parts.flatMap((one) => one ?? []);
    const rest = items.filter((_, index) => parts[index] === null);
    if (rest.length === 0) return found;
    const own = this.systemUnder(rest, above, at);
    return own === null && found.length === 0 ? null : [...(own ?? []), ...found];
  }

  /** "Lining: felt" under a period is of it. */
  private partUnder(item: Inline, above: string, at: number): Proposal[] | null {
    const entry = splitEntry(item);
    const part = entry && partNamed(entry.head);
    if (!entry || !part) return null;
    const told = constructionOf(
      part,
      entry.body,
      sayerOf(item, entry.body, this.context.of(at, 'list')),
      readPeriods(above),
    );
    return told.length > 0 ? told : null;
  }

  private systemUnder(items: readonly Inline[], above: string, at: number): Proposal[] | null {
    const body = items.map(({ text }) => text.replace(/[.;,]$/, '')).join('. ');
    const told = items.slice(1).reduce((one, next) => afterHead(one, '. ', next), items[0]!);
    const whole = { ...afterHead(plainWords(above), ': ', told), selector: items[0]!.selector };
    return readEntry({ head: above, body, whole }, this.context.of(at, 'list'), this.source.day);
  }

  /** Labels beside their values, under the name of a model or the code of a workshop. */
  private facts(
    entries: readonly (Entry | null)[],
    above: string,
    at: number,
    form: Context['form'],
  ): Proposal[] | null {
    const told = entries.flatMap((one) => one ?? []);
    if (told.length < entries.length || !areFacts(told.map(({ head }) => head))) return null;
    const context = this.context.of(at, form);
    const named = above !== '' && above.length <= longestName ? above.replace(/[\s:]{1,4}$/, '') : context.heading;
    const facts = told.map(({ head, body, whole }) => ({ label: head, value: body, selector: whole.selector }));
    const found = readFacts(facts, { ...context, heading: named });
    return found.length > 0 ? found : null;
  }

  private definitions({ pairs }: Extract<Block, { kind: 'definitions' }>, at: number): void {
    const entries = pairs.map(({ term, words }) => ({ head: term.text, body: words.text, whole: words }));
    const told = this.facts(entries, '', at, 'definition');
    if (told) this.found.push(...told);
    else for (const { term, words } of this.withoutCode(pairs, entries, at, 'definition')) this.pair(term, words, at);
  }

  /** Things without those whose entries tell one code between them, which is taken. */
  private withoutCode<T>(of: readonly T[], entries: readonly (Entry | null)[], at: number, form: Context['form']): T[] {
    const context = this.context.of(at, form);
    const placed = positionsOf(entries, context);
    if (placed) {
      this.found.push(...placed);
      return [];
    }
    const told = codeOfEntries(entries, context, this.source.day);
    if (told) this.found.push(...told.found);
    return of.filter((_, index) => !told || told.rest.has(index));
  }

  /** `read` is what the item tells as an entry; `country` is the one that the list hangs under: its towns lie there. */
  private item(item: Inline, read: Proposal[] | null, at: number, country: string | null): void {
    if (read) this.found.push(...(country === null ? read : read.map((one) => placedIn(country, one))));
    else this.paragraph(item, at);
  }

  private entry(
    item: Inline,
    at: number,
    form: Context['form'] = 'list',
    entry: Entry | null = splitEntry(item),
  ): Proposal[] | null {
    const context = this.context.of(at, form);
    const read = (entry && readEntry(entry, context, this.source.day)) ?? readOfPart(item, context);
    this.context.tell(read ?? []);
    return read;
  }

  /** What a short paragraph says right under a heading that asks: where the code is, what a part was of. */
  private answer(words: Inline, at: number, context: Context): Proposal[] {
    const above = this.blocks[at - 1];
    if (above?.kind !== 'heading' || this.blocks[at]!.kind !== 'paragraph' || words.text.length > longestEntry)
      return [];
    // The page's own heading names no model of many.
    const isFirst = this.firstHeading === at - 1;
    const whole = afterHead(above.words, ': ', words);
    const read = readEntry({ head: above.words.text, body: words.text, whole }, context, this.source.day);
    return (read ?? []).filter((one) => {
      if (one.kind === 'model') return !isFirst;
      return answered.has(one.kind) && !(one.kind === 'carrier' && one.model !== undefined);
    });
  }

  private pair(term: Inline, words: Inline, at: number): void {
    const entry = { head: term.text, body: words.text, whole: afterHead(term, ': ', words) };
    const read = readEntry(entry, this.context.of(at, 'definition'), this.source.day);
    this.context.tell(read ?? []);
    if (read) this.found.push(...read);
    else this.paragraph(words, at);
  }

  private paragraph(words: Inline, at: number): void {
    // "All of them were in Scotland."
    this.heading.country = countryOfAll(words.text) ?? this.heading.country;
    const all = linesOf(words);
    const entries = all.length > 1 ? all.map(splitEntry) : [];
    const facts = entries.length > 0 ? this.facts(entries, '', at, 'list') : null;
    if (facts) {
      this.found.push(...facts);
      return;
    }
    const lines = entries.length > 0 ? this.withoutCode(all, entries, at, 'list') : all;
    if (lines.length < all.length) {
      for (const line of lines) this.item(line, this.entry(line, at), at, null);
      return;
    }
    const read = all.length > 1 ? lines.map((line) => this.entry(line, at)) : [];
    // Lines that are entries are a list, however the page made it.
    if (read.filter((one) => one !== null).length >= Math.max(2, lines.length / 2)) {
      for (const [index, one] of read.entries())
        this.found.push(...(one ?? this.prose.read(lines[index]!, this.context.of(at, 'prose'), this.found.length)));
      return;
    }
    const rows = all.length > 1 && read.every((one) => one === null) ? this.rows(lines, at, 'list') : null;
    if (rows) {
      this.found.push(...rows);
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
    const context = this.context.of(at, 'prose');
    const told = this.prose.read(whole, context, this.found.length, this.heading.section);
    this.context.tell(told);
    this.found.push(...(told.length > 0 ? told : this.answer(words, at, context)));
  }
}

const placedIn = (country: string, one: Proposal): Proposal =>
  one.kind === 'plant' && one.place === unknownPlace ? { ...one, place: country } : one;

/** A row of a label and what it says. */
function entryOfRow([label, value, ...more]: readonly Cell[]): Entry | null {
  if (!label?.words || !value?.words || more.length > 0) return null;
  return { head: label.words.text, body: value.words.text, whole: afterHead(label.words, ' | ', value.words) };
}

/** Workshops that only the date of a code tells are left out where the page says of their letters what they are. */
function withoutKnown(found: readonly Proposal[], byExamples: ReadonlySet<Proposal>): Proposal[] {
  const told = new Set(found.flatMap((one) => (one.kind === 'plant' && !byExamples.has(one) ? [one.code] : [])));
  return found.filter((one) => !(one.kind === 'plant' && byExamples.has(one) && told.has(one.code)));
}

/** Entries, each "after that" with the time that it means by the one before. */
function linkedEntries(entries: readonly (Entry | null)[]): (Entry | null)[] {
  return entries.map((entry, at) => {
    const time = entry && timeOfLinked(entry.head, entries[at - 1]?.head);
    return entry && time !== null ? { ...entry, head: time } : entry;
  });
}

const longestName = 40;
const mostOnCard = 8;

/** "Maße: 34 × 26 cm", and a size or a time alone, as a label and what it says. */
function factOfLine(words: Inline): Entry | null {
  const { text } = words;
  const label = isPeriod(text) ? 'Period' : isSize(text) ? 'Size' : null;
  return label === null ? splitEntry(words) : { head: label, body: text, whole: words };
}

const isSize = (text: string): boolean => {
  const [size, ...more] = readSizes(text);
  return size !== undefined && more.length === 0 && size.end - size.start >= text.trim().length - 4;
};

/** What a heading and the line below it tell together. */
const answered: ReadonlySet<Proposal['kind']> = new Set(['carrier', 'construction', 'plant', 'stamped']);
