import { makersIn } from '../maker-named';
import type { Inline } from '../page/inline';
import { type Context, type OwnFields, propose } from '../propose';
import { readWhere } from '../said/where';
import type { Retraction } from '../settle';
import type { Doubt, Proposal } from '../types';
import { constructionIn } from './construction';
import { lettersIn } from './letters';
import { modelBefore, modelsIn, pricesIn } from './models';
import { plantsIn } from './plants';
import { type Sentence, sentencesOf } from './sentences';
import { type Section, systemsIn } from './systems';

type Maker = string | null | undefined;

/** Reads paragraphs in order; what one sentence names, the next may mean by "it". */
export class ProseReader {
  readonly retractions: Retraction[] = [];

  constructor(
    private readonly makers: readonly string[],
    private readonly day: string,
  ) {}

  /** What a paragraph proposes; `count` is how many proposals the page has made before, `above` what its heading tells. */
  read(words: Inline, context: Context, count: number, above: Section | null = null): Proposal[] {
    const sentences = sentencesOf(words.text);
    const makerOf = this.makersBySentence(sentences, context.maker);
    const found: Proposal[] = [];
    const add = (own: OwnFields, told: readonly Sentence[], doubts: readonly Doubt[] = []) => {
      const [first] = told;
      const last = told.at(-1)!;
      const range = { start: first!.start, end: last.start + last.text.length };
      const struck = words.struck.some(({ start, end }) => start <= range.start + 2 && end >= range.end - 2);
      const said = { words: words.text.slice(range.start, range.end), selector: words.selector };
      const maker = makerOf.get(first!);
      found.push(
        propose(context, own, {
          ...said,
          doubts: [...doubts, struck && 'withdrawn'],
          ...(maker !== undefined && { maker }),
        }),
      );
    };
    for (const { own, doubts, sentences: told } of systemsIn(sentences, this.day, above)) add(own, told, doubts);
    let model: string | null = null;
    for (const sentence of sentences) {
      const { text } = sentence;
      const { plants, retracted } = plantsIn(text);
      for (const code of retracted) this.retractions.push({ code, before: count + found.length });
      for (const { own, doubts } of plants) add(own, [sentence], doubts);
      const where = readWhere(text);
      if (where) add({ kind: 'carrier', where }, [sentence]);
      const told = modelsIn(text, model, this.makers);
      for (const { backwards, ...own } of told)
        add({ kind: 'model', ...own }, [sentence], backwards ? ['backwards'] : []);
      for (const letter of lettersIn(text)) add(letter, [sentence]);
      for (const price of pricesIn(text, model, this.makers)) add(price, [sentence]);
      for (const { own, backwards } of constructionIn(text)) add(own, [sentence], backwards ? ['backwards'] : []);
      model = told.at(-1)?.name ?? modelBefore(text, text.length, this.makers) ?? model;
    }
    return found;
  }

  /** Where a page tells of several makers, a sentence is of the one it names, else of the one named before it. */
  private makersBySentence(sentences: readonly Sentence[], above: Maker): Map<Sentence, Maker> {
    let maker = above;
    return new Map(
      sentences.map((sentence) => {
        const named = makersIn(sentence.text, this.makers);
        if (named.length === 1) maker = named[0]!;
        else if (named.length > 1) maker = undefined;
        return [sentence, maker];
      }),
    );
  }
}
