import { HeadingAbove } from './heading-above';
import { type Block, headingsOf } from './page/blocks';
import { notesOf } from './page/lines';
import { longestLook } from './page/text-of';
import type { Context } from './propose';
import { francsOf } from './said/francs';
import { readLegend } from './said/layout';
import { formTold } from './said/layout-referred';
import type { SaidLayout } from './said/layout-words';
import { partNamed } from './said/part';
import { topicOf } from './topic';
import type { Proposal } from './types';

/** A paragraph no longer than this may be one entry of a list that the page made of paragraphs. */
export const longestEntry = 160;

const paragraphsOf = (blocks: readonly Block[]): string =>
  blocks
    .flatMap((block) => (block.kind === 'paragraph' ? [block.words.text] : []))
    .join('\n')
    .slice(0, longestLook);

/** What the page as a whole and the blocks above one say of it. */
export class PageContext {
  readonly heading: HeadingAbove;
  private earlier: SaidLayout | null = null;
  private readonly page: Pick<Context, 'about' | 'francs' | 'makers' | 'source' | 'notes' | 'legend'>;

  /** `body` is the words of the blocks. */
  constructor(
    title: string,
    body: string,
    private readonly blocks: readonly Block[],
    source: Proposal['source'],
    makers: string[],
  ) {
    const legend = readLegend(paragraphsOf(blocks));
    const about = topicOf(`${title}\n${headingsOf(blocks)[0] ?? ''}`);
    this.page = { about, francs: francsOf(body), makers, source, notes: notesOf(blocks), legend };
    this.heading = new HeadingAbove(makers, legend);
  }

  /** What is told now is what came earlier of what follows. */
  tell(found: readonly Proposal[]): void {
    this.earlier = formTold(found) ?? this.earlier;
  }

  /** What is known of a block by its place. */
  of(block: number, form: Context['form']): Context {
    const { maker, name: heading, part } = this.heading;
    const { earlier } = this;
    return {
      ...this.page,
      about: {
        ...this.page.about,
        carriers: this.page.about.carriers || this.heading.ofPlaces,
        plants: this.page.about.plants || this.heading.ofPlants,
      },
      earlier,
      maker,
      heading,
      above: this.above(block),
      part: part ?? this.partAbove(block),
      block,
      form,
    };
  }

  /** The part that a line right above names, and nothing else: it heads what follows as a heading does. */
  private partAbove(at: number): Context['part'] {
    const block = this.blocks[at - 1];
    return block?.kind === 'paragraph' ? partNamed(block.words.text) : null;
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
}
