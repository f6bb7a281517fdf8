const escaped = (text: string): string => text.replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A word parted at the end of its line: the hyphen goes where small letters stand on both sides. */
const parted = /(?<=\p{Ll})[-\u00ad\u2010]\r?\n(?=\p{Ll})/gu;
/** A line that only counts pages: "3", "- 3 -", "Seite 3 von 12". */
const pageNumber =
  /^[\s–-]{0,4}(?:(?:page|seite|pagina|página|pag\.|p\.|s\.)\s?)?\d{1,4}(?:\s?(?:\/|of|von|sur|di|de|van)\s?\d{1,4})?[\s–-]{0,4}$/iu;
const bullet = /^\s{0,8}[•◦▪‣●○■–*·-]\s{1,8}(?=\S)/u;

type Kind = 'row' | 'item' | 'line';
const kindOf = (line: string): Kind => (line.includes('\t') ? 'row' : bullet.test(line) ? 'item' : 'line');

/** A table as it is copied: its cells parted by tabs. The first row is its head. */
function tableOf(rows: readonly string[]): string {
  const cells = rows.map((row) => row.split('\t'));
  const html = cells.map(
    (row, at) =>
      `<tr>${row.map((cell) => (at === 0 ? `<th>${cell.trim()}</th>` : `<td>${cell.trim()}</td>`)).join('')}</tr>`,
  );
  return `<table>${html.join('')}</table>`;
}

function blockOf(kind: Kind, lines: readonly string[]): string {
  if (kind === 'row' && lines.length > 1) return tableOf(lines);
  if (kind === 'item') return `<ul>${lines.map((line) => `<li>${line.replace(bullet, '').trim()}</li>`).join('')}</ul>`;
  return `<p>${lines.map((line) => line.trim()).join('<br>')}</p>`;
}

/** The lines of one paragraph, parted where rows of a table or entries of a list begin and end. */
function blocksOf(lines: readonly string[]): string {
  const groups: { kind: Kind; lines: string[] }[] = [];
  for (const line of lines) {
    const last = groups.at(-1);
    const kind = kindOf(line);
    if (last?.kind === kind) last.lines.push(line);
    else groups.push({ kind, lines: [line] });
  }
  return groups.map((group) => blockOf(group.kind, group.lines)).join('');
}

/**
 * Text without any mark-up, as it is copied out of a PDF document or a page, as a page: its first line is the heading, an
 * empty line ends a paragraph, tabs part the cells of a table, and bullets the entries of a list.
 */
export function pageOfText(source: string): string {
  const text = escaped(source.replace(/\r\n?/g, '\n').replace(/\f/g, '\n\n').trim()).replace(parted, '');
  const lines = text.split('\n').filter((line) => line.trim() === '' || !pageNumber.test(line));
  const [first = '', ...others] = lines;
  const opensTable = first.includes('\t');
  const paragraphs: string[][] = [[]];
  for (const line of opensTable ? lines : others) {
    if (line.trim() === '') paragraphs.push([]);
    else paragraphs.at(-1)!.push(line);
  }
  const head = opensTable ? '' : `<title>${first.trim()}</title><h1>${first.trim()}</h1>`;
  return head + paragraphs.map(blocksOf).join('');
}
