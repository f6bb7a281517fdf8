/** A run of words of the page, with what is struck out and which footnotes it points at. */
export interface Inline {
  text: string;
  /** Half-open ranges of `text` that are struck out. */
  struck: { start: number; end: number }[];
  /** Footnote marks that stood in it: "1", "*", "a". */
  marks: string[];
  selector: string;
}

/** Joins texts as a browser shows them: blanks fold to one, line breaks stay. */
export class InlineBuilder {
  private text = '';
  private readonly struck: Inline['struck'] = [];
  private readonly marks: string[] = [];

  add(text: string, isStruck: boolean): void {
    const start = this.text.length;
    const folded = text.replace(/[ \t\r\n\f]{1,200}/g, ' ').replace(/ {2,}/g, ' ');
    this.text += /(?:^|[ \n])$/.test(this.text.slice(-1)) ? folded.replace(/^ /, '') : folded;
    if (isStruck && this.text.length > start) this.struck.push({ start, end: this.text.length });
  }

  break(): void {
    if (this.text !== '' && !this.text.endsWith('\n')) this.text = `${this.text.replace(/ $/, '')}\n`;
  }

  mark(text: string): void {
    this.marks.push(text.replace(/[[\]()\s]/g, ''));
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

/** Whether all that is said is struck out. */
export const isStruck = ({ text, struck }: Inline): boolean =>
  struck.reduce((sum, { start, end }) => sum + end - start, 0) >= text.replace(/\s{1,9}/g, '').length && text !== '';
