import { attribute, select } from '../../listing/page/dom';
import { type Cell, GridBuilder } from './grid';
import { type Inline, InlineBuilder, onNewLine } from './inline';
import { type LaidOut, laidOut } from './laid-out';
import { isHeadingLike, isLeadIn, leadOf, restOf } from './lead-in';
import { blocksOfPassage } from './passage';
import { inlineTags } from './tags';
import { talkIn } from './talk';
import { type Step, walk } from './walk';

/** A page as what it is made of, in order. */
export type Block =
  /** `own` is one that heads the paragraph behind it and no more. */
  | { kind: 'heading'; level: number; words: Inline; own?: true }
  | { kind: 'table'; rows: Cell[][]; caption: string; selector: string }
  /** `above` is the item of a list that this one hangs under. */
  | { kind: 'list'; items: Inline[]; above: string; selector: string }
  | { kind: 'definitions'; pairs: { term: Inline; words: Inline }[]; selector: string }
  | { kind: 'paragraph'; words: Inline; quoted: boolean };

const boldTags = new Set(['b', 'strong', 'big']);
/** Level of a bold line that stands where a heading would: below all that the page calls one. */
const boldLevel = 7;
const struckTags = new Set(['del', 's', 'strike']);
/** Layout tables lie in one another; more of them than this are not looked into for what they hold. */
const deepestTable = 6;
/** "[1]", "*", "[source?]": a raised mark, and what editors ask for in brackets. */
const footnote = /^\s{0,3}(?:[[(]?(?:\d{1,3}|[a-z]|[*†‡]{1,3})[\])]?|\[[^[\]]{2,30}\])\s{0,3}$/i;

/** A table of data; one that holds other things, or a single row, only lays out what stands in it: a forum's posts. */
const isData = (table: Element): boolean =>
  select(table, 'table, h1, h2, h3, ul, ol, form, blockquote, [role="table"]').length === 0 &&
  select(table, 'tr, [role="row"]').length > 1;
const isTable = (element: Element, tag: string) =>
  tag === 'table' || ['table', 'grid'].includes(attribute(element, 'role', 20) ?? '');

/** Whether the page itself calls it a heading. */
export const isOwnHeading = ({ level }: { level: number }): boolean => level < boldLevel;

/** The texts of what the page itself calls headings. */
export const headingsOf = (blocks: readonly Block[]): string[] =>
  blocks.flatMap((block) => (block.kind === 'heading' && isOwnHeading(block) ? [block.words.text] : []));

interface Container {
  element: Element;
  kind: 'paragraph' | 'item' | 'heading' | 'term' | 'definition' | 'quote' | 'list' | 'definitions';
  selector: () => string;
  level: number;
}

/** Reads what is shown of a page into blocks. The work grows with the page and with nothing else. */
export function readBlocks(root: Element | Document): Block[] {
  const reader = new BlockReader(laidOut(root));
  for (const step of walk(root)) reader.take(step);
  return reader.finish();
}

class BlockReader {
  private readonly blocks: Block[] = [];
  private words = new InlineBuilder();
  private readonly open: Container[] = [];
  /** The table that is being read; one that is laid out by other elements has none of its own. */
  private grid: { builder: GridBuilder; element: Element | null } | null = null;
  private struck = 0;
  private bold = 0;
  private sup: string | null = null;
  private tables = 0;
  private term: Inline[] = [];
  private readonly lists = new Map<Element, Extract<Block, { kind: 'list' }>>();
  private readonly definitions = new Map<Element, Extract<Block, { kind: 'definitions' }>>();
  /** The text of a passage whose line breaks and blanks are its own. */
  private typed: string | null = null;

  constructor(private readonly laid: ReadonlyMap<Element, LaidOut>) {}

  take(step: Step): void {
    if (step.kind === 'text') this.text(step.text);
    else if (step.kind === 'open') this.enter(step);
    else this.leave(step);
  }

  finish(): Block[] {
    this.flush();
    return this.blocks;
  }

  private get sink(): InlineBuilder {
    return this.grid ? this.grid.builder.words : this.words;
  }

  private text(text: string): void {
    if (this.typed !== null) this.typed += text;
    else if (this.sup !== null) this.sup += text;
    else this.sink.add(text, this.struck > 0, this.bold > 0);
  }

  private enter({ element, tag, selector }: Extract<Step, { kind: 'open' }>): void {
    if (this.typed !== null) {
      if (tag === 'br') this.typed += '\n';
      return;
    }
    if (struckTags.has(tag)) this.struck += 1;
    if (boldTags.has(tag)) this.bold += 1;
    if (tag === 'sup') this.sup = '';
    if (tag === 'br') this.sink.break();
    const laid = this.laid.get(element);
    if (!laid && (inlineTags.has(tag) || tag === 'br' || tag === 'wbr')) return;
    if (this.grid) {
      if (!this.grid.builder.enter(element, tag, selector, laid)) this.grid.builder.words.break();
      return;
    }
    this.flush();
    if (laid?.opens) {
      this.grid = { builder: new GridBuilder(selector()), element: null };
      this.grid.builder.enter(element, tag, selector, laid);
      return;
    }
    if (isTable(element, tag)) {
      this.tables += 1;
      if (this.tables <= deepestTable && isData(element)) {
        this.grid = { builder: new GridBuilder(selector()), element };
        return;
      }
    }
    if (tag === 'pre') this.typed = '';
    const kind = kindOf(tag, this.open.at(-1)?.kind ?? null);
    this.open.push({ element, kind, selector, level: /^h[1-6]$/.test(tag) ? Number(tag[1]) : 0 });
  }

  private leave({ element, tag }: Extract<Step, { kind: 'close' }>): void {
    if (this.typed !== null) {
      if (tag !== 'pre') return;
      for (const block of blocksOfPassage(this.typed, this.open.at(-1)!.selector())) this.blocks.push(block);
      this.typed = null;
    }
    if (struckTags.has(tag)) this.struck -= 1;
    if (boldTags.has(tag)) this.bold -= 1;
    if (tag === 'sup' && this.sup !== null) {
      const said = this.sup;
      this.sup = null;
      if (footnote.test(said)) this.sink.mark(said);
      else this.sink.add(said, this.struck > 0);
    }
    const laid = this.laid.get(element);
    if (!laid && (inlineTags.has(tag) || tag === 'br' || tag === 'wbr')) return;
    if (this.grid) {
      const { builder, element: table } = this.grid;
      if (table !== element && !builder.leave(tag, element, laid)) builder.words.break();
      if (table !== element && (table || !laid?.ends)) return;
      const { rows, caption, selector } = builder.done();
      const talk = talkIn(rows);
      if (talk) for (const words of talk) this.blocks.push({ kind: 'paragraph', words, quoted: false });
      else if (rows.length > 0) this.blocks.push({ kind: 'table', rows, caption, selector });
      this.grid = null;
      if (table) this.tables -= 1;
      return;
    }
    this.flush();
    if (isTable(element, tag)) this.tables -= 1;
    this.open.pop();
  }

  /** Puts the words gathered since the last boundary into the block that they stand in. */
  private flush(): void {
    const here = this.open.at(-1);
    const gathered = this.words;
    this.words = new InlineBuilder();
    const selector = here?.selector() ?? 'body';
    const kind = here?.kind ?? 'paragraph';
    if (kind === 'paragraph') {
      const quoted = this.open.some((one) => one.kind === 'quote');
      for (const { words, bold, leadIn } of gathered.parts(selector)) {
        if (bold && isHeadingLike(words.text)) this.blocks.push({ kind: 'heading', level: boldLevel, words });
        else if (!bold && isLeadIn(words.text, leadIn))
          this.blocks.push(
            { kind: 'heading', level: boldLevel, words: leadOf(words, leadIn), own: true },
            { kind: 'paragraph', words: restOf(words, leadIn), quoted },
          );
        else this.blocks.push({ kind: 'paragraph', words, quoted });
      }
      return;
    }
    const words = gathered.done(selector);
    if (!words) return;
    if (kind === 'heading') this.blocks.push({ kind, level: here!.level, words });
    else if (kind === 'item') this.item(words);
    else if (kind === 'term') this.term.push(words);
    else if (kind === 'definition') this.definition(words);
    else this.blocks.push({ kind: 'paragraph', words, quoted: this.open.some((one) => one.kind === 'quote') });
  }

  private holder(kind: Container['kind']): Container | undefined {
    return this.open.findLast((one) => one.kind === kind);
  }

  private item(words: Inline): void {
    const list = this.holder('list');
    if (!list) {
      this.blocks.push({ kind: 'paragraph', words, quoted: false });
      return;
    }
    let block = this.lists.get(list.element);
    if (!block) {
      const outer = this.open.slice(0, this.open.indexOf(list)).findLast((one) => one.kind === 'list');
      const above = (outer && this.lists.get(outer.element)?.items.at(-1)?.text) ?? '';
      block = { kind: 'list', items: [], above, selector: list.selector() };
      this.lists.set(list.element, block);
      this.blocks.push(block);
    }
    block.items.push(words);
  }

  private definition(words: Inline): void {
    const list = this.holder('definitions');
    let block = list && this.definitions.get(list.element);
    const last = block?.pairs.at(-1);
    // A second answer to the same question.
    if (last && this.term.length === 0 && this.open.at(-1)?.element !== list?.element) {
      block!.pairs[block!.pairs.length - 1] = { term: last.term, words: onNewLine(last.words, words) };
      return;
    }
    if (!list || this.term.length === 0) {
      this.blocks.push({ kind: 'paragraph', words, quoted: false });
      return;
    }
    if (!block) {
      block = { kind: 'definitions', pairs: [], selector: list.selector() };
      this.definitions.set(list.element, block);
      this.blocks.push(block);
    }
    for (const term of this.term) block.pairs.push({ term, words });
    this.term = [];
  }
}

function kindOf(tag: string, holder: Container['kind'] | null): Container['kind'] {
  if (/^h[1-6]$/.test(tag)) return 'heading';
  if (tag === 'li') return 'item';
  if (tag === 'ul' || tag === 'ol' || tag === 'menu') return 'list';
  if (tag === 'dl' || tag === 'details') return 'definitions';
  if (tag === 'dt' || tag === 'summary') return 'term';
  if (tag === 'dd') return 'definition';
  if (tag === 'blockquote') return 'quote';
  // What a question opens to is its answer.
  if (holder === 'definitions' && tag !== 'div') return 'definition';
  return holder === 'item' || holder === 'definition' || holder === 'term' || holder === 'heading'
    ? holder
    : 'paragraph';
}
