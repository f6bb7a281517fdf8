import { JSDOM } from 'jsdom';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { selectWords, type WantedWords } from '../../../../src/reader/page/select-words';
import { piecesOf, takeFromPage } from '../../../../src/take';
import { asidePages, laterPages, pageHtml, seenPages, source } from '../../../take-pages/score';

/** What is selected on a page after the words were asked for, blanks left out; null when they are not there. */
function selected(page: JSDOM, wanted: WantedWords): string | null {
  const { window } = page;
  window.Element.prototype.scrollIntoView = () => {};
  vi.stubGlobal('document', window.document);
  vi.stubGlobal('NodeFilter', window.NodeFilter);
  vi.stubGlobal('getSelection', () => window.getSelection());
  return selectWords(wanted) ? plain(String(window.getSelection())) : null;
}
const plain = (text: string) => text.replace(/\s+/g, '');
const page = (body: string) => new JSDOM(`<!doctype html><title>Codes</title><body>${body}`);

afterEach(() => vi.unstubAllGlobals());

describe('words shown on their page', () => {
  it.each([...seenPages, ...asidePages, ...laterPages])('are found for each proposal of %s', (name) => {
    const told = takeFromPage(new JSDOM(pageHtml(name)).window.document, source);
    const shown = new JSDOM(pageHtml(name));
    for (const { words, at } of told) {
      const marked = selected(shown, { words: piecesOf({ words, at }), selector: at.selector });
      expect(marked, words).not.toBeNull();
      expect(plain(piecesOf({ words, at }).join(''))).toContain(marked);
      const read = shown.window.document.querySelector(at.selector)!;
      const range = shown.window.getSelection()!.getRangeAt(0);
      expect(read.compareDocumentPosition(range.startContainer) & 2, `${words} stands before its place`).toBe(0);
    }
  });

  it('are found across markup, line breaks and blanks', () => {
    const marked = selected(page('<p>From <b>1951</b>, the\n house <i>stamp</i>ed four digits.'), {
      words: 'From 1951, the house stamped',
    });
    expect(marked).toBe('From1951,thehousestamped');
  });

  it('are those at their place where they stand several times', () => {
    const shown = page(
      '<p>since 1990</p><table><tr><td id="a">KV<td>since 1990<tr><td id="b">LD<td>since 1990</table>',
    );
    const anchor = (wanted: WantedWords) => {
      selected(shown, wanted);
      return shown.window.getSelection()!.anchorNode!.parentElement!;
    };
    expect(anchor({ words: 'since 1990' }).tagName).toBe('P');
    const row = anchor({ words: ['LD', 'since 1990'], selector: '#b' });
    expect([row.id, plain(String(shown.window.getSelection()))]).toEqual(['b', 'LDsince1990']);
    expect(anchor({ words: 'since 1990', around: 'KV since 1990 LD' }).closest('tr')?.rowIndex).toBe(0);
  });

  it('of a row whose cells are merged with those of other rows are the cells that stand together', () => {
    const shown = page(
      '<table><tr><td rowspan="2" id="it">Italy<td>FI<td>1989<td rowspan="2">open<tr><td>FJ<td>1996</table>',
    );
    const wanted = { words: ['Italy', 'FJ', '1996', 'open'], selector: '#it' };
    expect(selected(shown, wanted)).toBe('FJ1996');
  });

  it('are not found where the page changed, where they are hidden, or where nothing was asked for', () => {
    const shown = page('<h1>Codes</h1><p hidden>KV is Belgium</p><script>"LD is France"</script>');
    expect(selected(shown, { words: 'BA is Italy', selector: 'table td' })).toBeNull();
    expect(selected(shown, { words: 'LD is France' })).toBeNull();
    expect(selected(shown, { words: ' ' })).toBeNull();
  });

  it('of a title are looked for in headings first', () => {
    const shown = page('<p>Carryall 30</p><h1>Carryall 30</h1>');
    selected(shown, { words: 'Carryall 30', field: 'title' });
    expect(shown.window.getSelection()!.anchorNode!.parentElement!.tagName).toBe('H1');
  });
});
