import { isLabel } from '../said/label';
import type { Cell } from './grid';
import { plainWords } from './inline';

/** What a line of plain text is part of. */
export type LineKind = 'row' | 'item' | 'line';

export const bullet = /^\s{0,8}[•◦▪‣●○■–*·-]\s{1,8}(?=\S)/u;
/** Two blanks, a tab or a bar between two words part columns; old hands put two blanks behind a sentence. */
const parted = /[^\s.!?:;,](?:[ \u3000]{2,200}|\t)\S|\|[^|]{1,400}\|/u;
/** A line drawn under the head of a table, or between its rows. */
export const ruler = /^\s{0,40}[|+:=_─-][\s|+:=_─┼-]{2,400}$/u;

const kindOf = (line: string): LineKind =>
  bullet.test(line) ? 'item' : parted.test(line) || ruler.test(line) ? 'row' : 'line';

/** Lines of plain text in runs: rows of a table, entries of a list, and other lines. A lone row is a line. */
export function runsOfLines(lines: readonly string[]): { kind: LineKind; lines: string[] }[] {
  const runs: { kind: LineKind; lines: string[] }[] = [];
  for (const line of lines) {
    const last = runs.at(-1);
    const kind = kindOf(line);
    if (last?.kind === kind) last.lines.push(line);
    else runs.push({ kind, lines: [line] });
  }
  return runs.map((run) => (run.kind === 'row' && rowsOf(run.lines).length < 2 ? { ...run, kind: 'line' } : run));
}

interface Piece {
  text: string;
  start: number;
}

const columns = /(?:\S[^\S\t]?){1,400}/gu;

function piecesOf(line: string): Piece[] {
  if (line.includes('|')) {
    const bare = line.trim().replace(/^\||\|$/g, '');
    return bare.split('|').map((text, start) => ({ text: text.trim(), start }));
  }
  if (line.includes('\t')) return line.split('\t').map((text, start) => ({ text: text.trim(), start }));
  return [...line.matchAll(columns)].map(({ 0: text, index }) => ({ text: text.trim(), start: index }));
}

/** Blanks by which a cell may begin before its column does. */
const slack = 2;

/** The cells of rows of plain text, those of a row with gaps under the heads above them; a row without its first cell goes on. */
export function rowsOf(lines: readonly string[]): string[][] {
  const [head = [], ...others] = lines.filter((line) => !ruler.test(line)).map(piecesOf);
  const rows = [head.map(({ text }) => text)];
  for (const pieces of others) {
    const row = head.map(() => '');
    for (const [at, { text, start }] of pieces.entries()) {
      const under = head.findLastIndex((column) => column.start <= start + slack);
      const column = pieces.length === head.length ? at : Math.max(0, under);
      row[column] = row[column] ? `${row[column]} ${text}` : text;
    }
    const last = rows.at(-1)!;
    if (row[0] === '' && rows.length > 1) {
      for (const [at, text] of row.entries()) if (text !== '') last[at] = `${last[at] ?? ''} ${text}`.trim();
    } else rows.push(row);
  }
  return rows;
}

/** Whether a first row heads the others: it leaves its corner empty, or says what stands in its columns. */
export const isHeadRow = (row: readonly string[]): boolean => {
  const [corner = ''] = row;
  return corner === '' || (!/^[A-Z]$/.test(corner) && isLabel(corner)) || row.filter(isLabel).length > row.length / 2;
};

/** Rows of texts as a table's cells; the first row is its head, where it says anything of the columns. */
export const cellsOf = (rows: readonly string[][], selector: string): Cell[][] =>
  rows.map((row, at) =>
    row.map((text) => ({
      words: text === '' ? null : plainWords(text, selector),
      head: at === 0 && isHeadRow(row),
      own: true,
      span: 1,
    })),
  );
