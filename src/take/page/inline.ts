/** A run of words of the page, with what is struck out and which footnotes it points at. */
export interface Inline {
  text: string;
  /** Half-open ranges of `text` that are struck out. */
  struck: { start: number; end: number }[];
  /** Footnote marks that stood in it: "1", "*", "a". */
  marks: string[];
  selector: string;
}

/** Words that stand for themselves: nothing of them is struck out or noted. */
export const plainWords = (text: string, selector = ''): Inline => ({ text, struck: [], marks: [], selector });

/** Joins texts as a browser shows them: blanks fold to one, line breaks stay. */
export class InlineBuilder {
  private text = '';
  private readonly struck: Inline['struck'] = [];
  private readonly bold: Inline['struck'] = [];
  private readonly marks: string[] = [];

  add(text: string, isStruck: boolean, isBold = false): void {
    const start = this.text.length;
    const folded = text.replace(/[ \t\r\n\f]{1,200}/g, ' ').replace(/ {2,}/g, ' ');
    this.text += /(?:^|[ \n])$/.test(this.text.slice(-1)) ? folded.replace(/^ /, '') : folded;
    if (isStruck && this.text.length > start) this.struck.push({ start, end: this.text.length });
    if (isBold && this.text.length > start) this.bold.push({ start, end: this.text.length });
  }

  break(): void {
    if (this.text !== '' && !this.text.endsWith('\n')) this.text = `${this.text.replace(/ $/, '')}\n`;
  }

  mark(text: string): void {
    this.marks.push(text.replace(/[[\]()\s]/g, ''));
  }

  /** The end of the bold words that a run begins with and goes on from; 0 where it does not. */
  private get leadIn(): number {
    const lead = this.text.length - this.text.trimStart().length;
    const [first] = this.bold;
    return first && first.start <= lead && first.end < this.text.trimEnd().length ? first.end - lead : 0;
  }

  /** The run parted where a line of it is bold as a whole, as pages without headings write them. */
  parts(selector: string): { words: Inline; bold: boolean; leadIn: number }[] {
    const whole = this.done(selector);
    if (!whole || this.bold.length === 0) return whole ? [{ words: whole, bold: false, leadIn: 0 }] : [];
    const lead = this.text.length - this.text.trimStart().length;
    const parts: { start: number; end: number; bold: boolean }[] = [];
    let reached = 0;
    let start = 0;
    for (const line of whole.text.split('\n')) {
      const end = start + line.length;
      while (this.bold[reached] && this.bold[reached]!.end - lead <= start) reached += 1;
      let covered = start;
      for (let at = reached; this.bold[at] && this.bold[at]!.start - lead <= covered && covered < end; at += 1)
        covered = Math.max(covered, this.bold[at]!.end - lead);
      const bold = line.trim() !== '' && covered >= end;
      const last = parts.at(-1);
      if (last && !bold && !last.bold) last.end = end;
      else parts.push({ start, end, bold });
      start = end + 1;
    }
    return parts
      .filter((part) => whole.text.slice(part.start, part.end).trim() !== '')
      .map(({ bold, ...range }) => ({
        words: partOf(whole, range.start, range.end),
        bold,
        leadIn: range.start === 0 ? this.leadIn : 0,
      }));
  }

  /** The run as it stands; null when nothing was said. */
  done(selector: string): Inline | null {
    const lead = this.text.length - this.text.trimStart().length;
    const text = this.text.trim();
    if (text === '') return null;
    const struck = this.struck
      .map(({ start, end }) => ({ start: Math.max(0, start - lead), end: Math.min(text.length, end - lead) }))
      .filter(({ start, end }) => end > start);
    const sign = /[*†‡]{1,3}$/.exec(text)?.[0];
    if (sign === undefined || sign === text) return { text, struck, marks: this.marks, selector };
    return { text: text.slice(0, -sign.length).trimEnd(), struck, marks: [...this.marks, sign], selector };
  }
}

/** A piece of a run, with what of it is struck out. */
export const partOf = (words: Inline, start: number, end: number): Inline => ({
  ...words,
  text: words.text.slice(start, end),
  struck: words.struck
    .filter((range) => range.start < end && range.end > start)
    .map((range) => ({ start: Math.max(0, range.start - start), end: Math.min(end, range.end) - start })),
});

/** Two runs as one of two lines. */
export const onNewLine = (one: Inline, next: Inline): Inline => afterHead(one, '\n', next);

/** A run behind another one, joined by a sign: what is struck out of either stays so. */
export function afterHead(one: Inline, joint: string, next: Inline): Inline {
  const by = one.text.length + joint.length;
  return {
    text: `${one.text}${joint}${next.text}`,
    struck: [...one.struck, ...next.struck.map(({ start, end }) => ({ start: start + by, end: end + by }))],
    marks: [...one.marks, ...next.marks],
    selector: next.selector,
  };
}

/** Whether all that is said is struck out. */
export const isStruck = ({ text, struck }: Inline): boolean =>
  struck.reduce((sum, { start, end }) => sum + end - start, 0) >= text.replace(/\s{1,9}/g, '').length && text !== '';
