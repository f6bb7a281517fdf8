import { browser } from '../../browser/api';

/** Where words are looked for first: a title's in headings, everything else anywhere. */
export type WordsField = 'title' | 'description';

/**
 * Scrolls a tab's page to some words and marks them as a selection, which changes nothing in the page. `around` holds
 * the words with what stands beside them, for words that stand in several places. False when they are not there, or when
 * the tab may not be asked any more.
 */
export async function showWords(tabId: number, field: WordsField, words: string, around: string): Promise<boolean> {
  try {
    const [answer] = await browser.scripting.executeScript({
      target: { tabId },
      func: selectWords,
      args: [field, words, around],
    });
    return answer?.result === true;
  } catch {
    return false;
  }
}

/** Runs in the page, by itself: it may use nothing that stands outside of it. */
function selectWords(field: string, words: string, around: string): boolean {
  const mostCharacters = 2_000_000;
  const plain = (text: string) => text.replace(/\s+/g, ' ').toLowerCase();
  const isHidden = (element: Element) =>
    element.closest('script, style, noscript, template') !== null ||
    (typeof element.checkVisibility === 'function' && !element.checkVisibility());

  /** The words that an element shows, blanks evened, and for each character where it stands. */
  const textOf = (room: Element) => {
    const walker = document.createTreeWalker(room, NodeFilter.SHOW_TEXT);
    const characters: string[] = [];
    const places: [node: Text, at: number][] = [];
    while (walker.nextNode() && characters.length < mostCharacters) {
      const node = walker.currentNode as Text;
      if (node.parentElement === null || isHidden(node.parentElement)) continue;
      for (let at = 0; at < node.data.length; at += 1) {
        const isBlank = /\s/.test(node.data.charAt(at));
        if (isBlank && characters.at(-1) === ' ') continue;
        characters.push(isBlank ? ' ' : node.data.charAt(at).toLowerCase().charAt(0));
        places.push([node, at]);
      }
      if (characters.at(-1) !== ' ') {
        characters.push(' ');
        places.push([node, node.data.length - 1]);
      }
    }
    return { text: characters.join(''), places };
  };

  const select = (room: Element): boolean => {
    const { text, places } = textOf(room);
    const wanted = plain(words).trim();
    if (wanted === '') return false;
    const beside = plain(around).trim();
    const near = beside === '' ? -1 : text.indexOf(beside);
    const start = near < 0 ? text.indexOf(wanted) : near + Math.max(0, beside.indexOf(wanted));
    const [first, last] = [places[start], places[start + wanted.length - 1]];
    if (start < 0 || !first || !last) return false;
    getSelection()?.setBaseAndExtent(first[0], first[1], last[0], Math.min(last[1] + 1, last[0].data.length));
    first[0].parentElement?.scrollIntoView({ block: 'center', behavior: 'instant' });
    return true;
  };
  if (field === 'title') for (const heading of document.querySelectorAll('h1, h2')) if (select(heading)) return true;
  return select(document.body);
}
