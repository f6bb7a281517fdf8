import { attribute } from '../../listing/page/dom';
import { type Inline, InlineBuilder, plainWords } from './inline';
import type { LaidOut } from './laid-out';

/** A cell of a table; one that was merged over several rows or columns stands in each of them. */
export interface Cell {
  words: Inline | null;
  /** Whether the page marks it as the head of its row or column. */
  head: boolean;
  /** Whether it is the first of the places that a merged cell fills. */
  own: boolean;
  /** Columns that the cell fills. */
  span: number;
}

export const textOfCell = (cell: Cell | undefined): string => cell?.words?.text ?? '';
/** The words of rows, each cell's once. */
export const wordsOfRows = (rows: readonly Cell[][]): Inline[] =>
  rows.flatMap((row) => row.flatMap(({ own, words }) => (own && words ? [words] : [])));
export const nobody: Cell = { words: null, head: false, own: true, span: 1 };

/** A head that stands for what the page leaves out. */
export const headOf = (text: string): Cell => ({ ...nobody, head: true, words: plainWords(text) });

/** Cells that one cell may fill: a page that says 100,000 means no table. */
const widest = 60;
const tallest = 1_000;
/** Cells that a table may have after merged ones are spread: far more than any that a person reads. */
const mostCells = 200_000;

const spanOf = (element: Element, name: string, most: number): number => {
  const value = Number.parseInt(attribute(element, name, 12) ?? '1', 10);
  return Number.isFinite(value) && value >= 1 ? Math.min(value, most) : 1;
};

/** Builds the grid of one table while the page is walked. */
export class GridBuilder {
  words = new InlineBuilder();
  private readonly rows: Cell[][] = [];
  private row: Cell[] | null = null;
  /** Merged cells that reach down, by their column. */
  private hanging = new Map<number, { left: number; cell: Cell }>();
  private opened: [number, { left: number; cell: Cell }][] = [];
  private readonly selector: string;
  private caption = '';
  private cells = 0;
  private cell: { element: Element; head: boolean; selector: string } | null = null;

  constructor(selector: string) {
    this.selector = selector;
  }

  /** Whether the element is a row, a cell or the caption. */
  enter(element: Element, tag: string, selector: () => string, laidOut?: LaidOut): boolean {
    const role = laidOut?.as ?? attribute(element, 'role', 20);
    if (laidOut?.startsRow) this.endRow();
    if (tag === 'tr' || role === 'row') {
      this.row = [];
      return true;
    }
    if (tag === 'caption') {
      this.words = new InlineBuilder();
      return true;
    }
    if (tag !== 'td' && tag !== 'th' && !['cell', 'gridcell', 'columnheader', 'rowheader'].includes(role ?? ''))
      return false;
    this.row ??= [];
    this.words = new InlineBuilder();
    this.cell = {
      element,
      head: tag === 'th' || role === 'columnheader' || role === 'rowheader',
      selector: selector(),
    };
    return true;
  }

  leave(tag: string, element: Element, laidOut?: LaidOut): boolean {
    if (this.cell?.element === element) {
      this.endCell(this.cell);
      this.cell = null;
      return true;
    }
    if (tag === 'caption') {
      this.caption = this.words.done('')?.text ?? '';
      this.words = new InlineBuilder();
      return true;
    }
    if (tag !== 'tr' && (laidOut?.as ?? attribute(element, 'role', 20)) !== 'row') return false;
    this.endRow();
    return true;
  }

  private endCell({ element, head, selector }: { element: Element; head: boolean; selector: string }): void {
    const words = this.words.done(selector);
    this.words = new InlineBuilder();
    const row = this.row!;
    const span = spanOf(element, 'colspan', widest);
    const down = spanOf(element, 'rowspan', tallest);
    for (let step = 0; step < span && this.cells < mostCells; step += 1) {
      this.fillHanging(row);
      const cell = { words, head, own: step === 0, span };
      if (down > 1) this.opened.push([row.length, { left: down, cell: { ...cell, own: false } }]);
      row.push(cell);
      this.cells += 1;
    }
  }

  /** Cells of rows above that reach down to the next place. */
  private fillHanging(row: Cell[]): void {
    for (let above = this.hanging.get(row.length); above; above = this.hanging.get(row.length)) {
      if (this.cells >= mostCells) return;
      row.push(above.cell);
      this.cells += 1;
    }
  }

  private endRow(): void {
    const row = this.row;
    if (!row) return;
    this.fillHanging(row);
    const reaching = [...this.hanging, ...this.opened].map(
      ([column, { left, cell }]) => [column, { left: left - 1, cell }] as const,
    );
    this.hanging = new Map(reaching.filter(([, { left }]) => left > 0));
    this.opened = [];
    if (row.some(({ words }) => words !== null)) this.rows.push(row);
    this.row = null;
  }

  done(): { rows: Cell[][]; caption: string; selector: string } {
    this.endRow();
    return { rows: this.rows, caption: this.caption, selector: this.selector };
  }
}
