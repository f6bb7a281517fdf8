/** Where words are looked for first: a title's in headings, everything else anywhere. */
export type WordsField = 'title' | 'description';

/** Words to show on a page, and what helps to find the right ones where they stand in several places. */
export interface WantedWords {
  /** In pieces where they were joined when they were read, as the cells of a row are. */
  words: string | readonly string[];
  field?: WordsField;
  /** The words with what stands beside them. */
  around?: string;
  /** Where they were read: of a row of a table, its first cell; they are looked for from there on. */
  selector?: string;
}

/**
 * Scrolls to words and marks them as a selection, which changes nothing in the page. Of a row whose cells are merged
 * with those of other rows, as many neighbouring cells as stand together. False when the words are not there. It runs
 * in the page by itself, so it may use nothing that stands outside of it.
 */
export function selectWords({ words, field, around = '', selector }: WantedWords): boolean {
  const mostCharacters = 2_000_000;
  // Blanks are left out: cells, line breaks and markup within a word part what reads as one.
  const plain = (text: string) => text.replace(/\s+/g, '').toLowerCase();
  const isHidden = (element: Element) =>
    element.closest('script, style, noscript, template') !== null ||
    (typeof element.checkVisibility === 'function' && !element.checkVisibility());

  /** The characters that an element shows, without blanks, and for each of them where it stands. */
  const textOf = (room: Element) => {
    const walker = document.createTreeWalker(room, NodeFilter.SHOW_TEXT);
    const characters: string[] = [];
    const places: [node: Text, at: number][] = [];
    while (walker.nextNode() && characters.length < mostCharacters) {
      const node = walker.currentNode as Text;
      if (node.parentElement === null || isHidden(node.parentElement)) continue;
      for (let at = 0; at < node.data.length; at += 1) {
        if (/\s/.test(node.data.charAt(at))) continue;
        characters.push(node.data.charAt(at).toLowerCase().charAt(0));
        places.push([node, at]);
      }
    }
    return { text: characters.join(''), places };
  };

  const pieces = (typeof words === 'string' ? [words] : words).map(plain);
  /** The words whole, or else the longest run of neighbouring pieces that stands there, and of those the first. */
  const findIn = (text: string, from: number): [at: number, length: number] | null => {
    for (let count = pieces.length; count > 0; count -= 1) {
      let first: [at: number, length: number] | null = null;
      for (let piece = 0; piece + count <= pieces.length; piece += 1) {
        const wanted = pieces.slice(piece, piece + count).join('');
        const at = wanted === '' ? -1 : text.indexOf(wanted, from);
        if (at >= 0 && (first === null || at < first[0])) first = [at, wanted.length];
      }
      if (first) return first;
    }
    return null;
  };

  const select = (room: Element, read: Element | null): boolean => {
    const { text, places } = textOf(room);
    const beside = plain(around);
    const near = beside === '' ? -1 : text.indexOf(beside);
    const from =
      near < 0
        ? places.findIndex(([node]) => read?.contains(node))
        : near + Math.max(0, beside.indexOf(pieces.join('')));
    const found = findIn(text, Math.max(0, from));
    if (!found) return false;
    const [first, last] = [places[found[0]]!, places[found[0] + found[1] - 1]!];
    getSelection()?.setBaseAndExtent(first[0], first[1], last[0], last[1] + 1);
    first[0].parentElement?.scrollIntoView({ block: 'center', behavior: 'instant' });
    return true;
  };
  const read = selector ? document.querySelector(selector) : null;
  if (read && select(read.closest('table') ?? read, read)) return true;
  if (field === 'title')
    for (const heading of document.querySelectorAll('h1, h2')) if (select(heading, null)) return true;
  return select(document.body, null);
}
