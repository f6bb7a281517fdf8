import { bullet, isHeadRow, rowsOf, runsOfLines } from './text-rows';
import { typedHeading } from './typed-heading';

const escaped = (text: string): string => text.replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A word parted at the end of its line: the hyphen goes where small letters stand on both sides. */
const parted = /(?<=\p{Ll})[-\u00ad\u2010]\r?\n(?=\p{Ll})/gu;
/** A line that only counts pages: "3", "- 3 -", "Seite 3 von 12". */
const pageNumber =
  /^[\s–-]{0,4}(?:(?:page|seite|pagina|página|pag\.|p\.|s\.)\s?)?\d{1,4}(?:\s?(?:\/|of|von|sur|di|de|van)\s?\d{1,4})?[\s–-]{0,4}$/iu;
/** A table as it is copied: its cells parted by tabs, bars or blanks. The first row is its head. */
function tableOf(lines: readonly string[]): string {
  const html = rowsOf(lines).map((row, at) => {
    const tag = at === 0 && isHeadRow(row) ? 'th' : 'td';
    return `<tr>${row.map((cell) => `<${tag}>${cell}</${tag}>`).join('')}</tr>`;
  });
  return `<table>${html.join('')}</table>`;
}

function blockOf({ kind, lines }: ReturnType<typeof runsOfLines>[number]): string {
  if (kind === 'row') return tableOf(lines);
  if (kind === 'item') return `<ul>${lines.map((line) => `<li>${line.replace(bullet, '').trim()}</li>`).join('')}</ul>`;
  return `<p>${lines.map((line) => line.trim()).join('<br>')}</p>`;
}

function blocksOf(lines: readonly string[]): string[] {
  const heading = lines.length > 0 ? typedHeading(lines) : null;
  return heading === null ? runsOfLines(lines).map(blockOf) : [`<h2>${heading}</h2>`];
}

/**
 * Text without any mark-up, as it is copied out of a PDF document or a page, as a page: its first line is the heading, an
 * empty line ends a paragraph, tabs, bars or blanks part the cells of a table, and bullets the entries of a list.
 */
export function pageOfText(source: string): string {
  const text = escaped(source.replace(/\r\n?/g, '\n').replace(/\f/g, '\n\n').trim()).replace(parted, '');
  const lines = text.split('\n').filter((line) => line.trim() === '' || !pageNumber.test(line));
  const [first = '', ...others] = lines;
  const opensTable = runsOfLines(lines.slice(0, 2))[0]?.kind === 'row';
  const paragraphs: string[][] = [[]];
  for (const line of opensTable ? lines : others) {
    if (line.trim() === '') paragraphs.push([]);
    else paragraphs.at(-1)!.push(line);
  }
  const head = opensTable ? '' : `<title>${first.trim()}</title><h1>${first.trim()}</h1>`;
  return head + paragraphs.flatMap(blocksOf).join('');
}
