import { attribute } from '../../listing/page/dom';
import { isLabel, rolesNamed } from '../said/label';
import { inlineTags } from './tags';
import { walk } from './walk';

/** What an element is of a table that a page lays out without one. */
export interface LaidOut {
  as: 'row' | 'cell';
  /** Whether a row begins with it, the table does, or the table ends with it. */
  startsRow: boolean;
  opens: boolean;
  ends: boolean;
}

/** An element as far as it tells whether it is a row, a cell or none. */
interface Part {
  element: Element;
  tag: string;
  kind: string;
  text: string;
  /** Whether words stand in it beside its elements, and whether all of these stand within its lines. */
  ownWords: boolean;
  flat: boolean;
  children: Part[];
}

/** A cell longer than this is a paragraph, and a row wider than this lays out a page. */
const longestCell = 160;
const widest = 12;
/** Elements of one parent beyond these are no table that a person lays out by hand. */
const mostChildren = 3_000;
const empty = new Set(['br', 'hr', 'img', 'wbr']);
/** Entries of a list are no cells. */
const listTags = new Set(['ul', 'ol', 'menu']);
const tableTags = new Set('table tbody thead tr td th dl dt dd pre'.split(' '));

const isInline = ({ tag }: Part): boolean => inlineTags.has(tag);
const isBlank = (text: string): boolean => !/[\p{L}\p{N}–—-]/u.test(text);
const isCell = ({ text, tag, flat }: Part): boolean => flat && text.length <= longestCell && !/^h[1-6]$/.test(tag);

/** The cells of an element that holds nothing beside them; null where it is no row. */
function cellsOf(part: Part): Part[] | null {
  if (part.ownWords || tableTags.has(part.tag)) return null;
  const cells = part.children.filter(({ tag }) => !empty.has(tag));
  return cells.length >= 2 && cells.length <= widest && cells.every(isCell) ? cells : null;
}

const labelsValue = (text: string): boolean => text.length <= 40 && !/[:：]\s{0,3}\S/.test(text) && isLabel(text);
const areHeads = (texts: readonly string[]): boolean => {
  const named = texts.filter((text) => rolesNamed(text).length > 0).length;
  return named >= 2 && named >= texts.length / 2;
};
const areLabels = (texts: readonly string[]): boolean =>
  texts.length >= 2 && texts.filter(labelsValue).length >= Math.max(2, texts.length * 0.6);

/** Whether rows of so many texts are a table: their heads say so, or a label begins each. */
const isTable = (rows: readonly string[][]): boolean =>
  rows.length >= 2 && (areHeads(rows[0]!) || (rows[0]!.length === 2 && areLabels(rows.map(([label]) => label!))));

/** How many columns cells without rows fill: as many as there are heads of one kind, or before the first that is none. */
function columnsOf(cells: readonly Part[]): number | null {
  const texts = cells.map(({ text }) => text);
  const other = cells.findIndex(({ kind }) => kind !== cells[0]!.kind);
  const unnamed = texts.findIndex((text) => rolesNamed(text).length === 0);
  const fit = (width: number) =>
    width >= 2 &&
    width <= widest &&
    cells.length % width === 0 &&
    cells.length / width >= 2 &&
    areHeads(texts.slice(0, width));
  const width = [other, unnamed].find(fit);
  if (width !== undefined) return width;
  return cells.length % 2 === 0 && areLabels(texts.filter((_, at) => at % 2 === 0)) ? 2 : null;
}

interface LaidRow {
  element: Element;
  cells: Part[];
}

/** Runs of children that are rows of the same width. */
function runsOfRows(children: readonly Part[]): LaidRow[][] {
  const runs: LaidRow[][] = [];
  let width = 0;
  for (const child of children) {
    const cells = isInline(child) ? null : cellsOf(child);
    if (cells && cells.length === width) runs.at(-1)!.push({ element: child.element, cells });
    else if (cells) runs.push([{ element: child.element, cells }]);
    width = cells?.length ?? 0;
  }
  return runs;
}

/**
 * Tables that a page lays out with other elements: rows of cells, cells in a grid, labels beside their values. Only where
 * heads or labels say what stands there. The work grows with the page alone.
 */
export function laidOut(root: Element | Document): ReadonlyMap<Element, LaidOut> {
  const found = new Map<Element, LaidOut>();
  const open: Part[] = [];
  for (const step of walk(root)) {
    const here = open.at(-1);
    if (step.kind === 'open') {
      const kind = `${step.tag} ${attribute(step.element, 'class', 200) ?? ''}`;
      open.push({ element: step.element, tag: step.tag, kind, text: '', ownWords: false, flat: true, children: [] });
    } else if (step.kind === 'text') {
      if (!here) continue;
      if (here.text.length <= longestCell) here.text += step.text.slice(0, longestCell + 1);
      here.ownWords ||= !isBlank(step.text);
    } else {
      const part = open.pop()!;
      part.text = part.text.trim();
      mark(part, found);
      for (const child of part.children) child.children = [];
      const above = open.at(-1);
      if (!above) continue;
      if (above.text.length <= longestCell) above.text += ` ${part.text} `;
      if (!isInline(part)) above.flat = false;
      if (above.children.length < mostChildren) above.children.push(part);
    }
  }
  return found;
}

function mark(part: Part, found: Map<Element, LaidOut>): void {
  if (isInline(part) || tableTags.has(part.tag)) return;
  const blocks = part.children.filter((child) => !isInline(child));
  const tables = runsOfRows(blocks).filter((rows) => isTable(rows.map(({ cells }) => cells.map(({ text }) => text))));
  for (const rows of tables) {
    for (const [at, { element, cells }] of rows.entries()) {
      found.set(element, { as: 'row', startsRow: true, opens: at === 0, ends: at === rows.length - 1 });
      for (const cell of cells) found.set(cell.element, { as: 'cell', startsRow: false, opens: false, ends: false });
    }
  }
  if (tables.length > 0 || listTags.has(part.tag) || part.ownWords || blocks.length < 4 || !blocks.every(isCell))
    return;
  const width = columnsOf(blocks);
  if (width === null) return;
  for (const [at, { element }] of blocks.entries())
    found.set(element, {
      as: 'cell',
      startsRow: at % width === 0,
      opens: at === 0,
      ends: at === blocks.length - 1,
    });
}
