// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { pickOnPage, selectorFor } from '../../../src/listing/pick';

const invite = 'Click the price.';
// jsdom lays nothing out: every element is said to stand at the same place.
Object.defineProperty(Element.prototype, 'getBoundingClientRect', {
  value: () => ({ left: 1, top: 2, width: 3, height: 4 }),
});

let pageSaw: string[] = [];
let signal: AbortController;
const overlay = () => document.documentElement.lastElementChild as HTMLElement;
const press = (key: string) => {
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
  document.body.dispatchEvent(event);
  return event.defaultPrevented;
};
const mouse = (name: string, selector: string) => {
  const event = new MouseEvent(name, { bubbles: true, cancelable: true });
  (document.querySelector(selector) as Element).dispatchEvent(event);
  return event.defaultPrevented;
};
const start = () => pickOnPage(document, 'price', { invite }, signal.signal);

// jsdom has no CSS object; the names here need only this much of it.
vi.stubGlobal('CSS', { escape: (name: string) => name.replace(/[^\w-]/g, '\\$&') });

beforeEach(() => {
  document.body.innerHTML =
    '<main><h1 class="title">Bag</h1><p class="price"><b>€5</b><i>now</i></p><p id="end">end</p></main>';
  pageSaw = [];
  signal = new AbortController();
  for (const name of ['click', 'keydown', 'pointerdown', 'pointerup', 'mousedown', 'mouseup'])
    document.body.addEventListener(name, ({ type }) => pageSaw.push(type), { signal: signal.signal });
});

afterEach(() => signal.abort());

describe('pointing at a field', () => {
  it('takes what is clicked, and the page sees nothing of it', async () => {
    const picked = start();
    for (const name of ['pointerdown', 'pointerup', 'mousedown', 'mouseup', 'click'])
      expect(mouse(name, '.price b'), name).toBe(true);
    expect(await picked).toEqual({ field: 'price', selector: expect.any(String) });
    expect(document.querySelector((await picked)?.selector ?? '')?.textContent).toBe('€5');
    expect(pageSaw).toEqual([]);
  });

  it('leaves the page as it was, with its clicks its own again', async () => {
    const before = document.documentElement.children.length;
    const picked = start();
    expect(document.documentElement.children.length).toBe(before + 1);
    press('Escape');
    expect(await picked).toBeNull();
    expect(document.documentElement.children.length).toBe(before);
    expect(mouse('click', '.price')).toBe(false);
    expect(press('Enter')).toBe(false);
    expect(pageSaw).toEqual(['click', 'keydown']);
  });

  it('ends when it is told to', async () => {
    const picked = start();
    signal.abort();
    expect(await picked).toBeNull();
  });

  it('lets other keys through', async () => {
    const picked = start();
    expect(press('a')).toBe(false);
    expect(pageSaw).toEqual(['keydown']);
    expect(['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'].map(press)).toEqual([true, true, true, true]);
    expect(press('Escape')).toBe(true);
    await picked;
  });

  it.each([
    [['ArrowUp'], 'p.price'],
    [['ArrowUp', 'ArrowUp'], 'main'],
    [['ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowUp'], 'body'],
    [['ArrowRight'], 'i'],
    [['ArrowRight', 'ArrowRight'], 'i'],
    [['ArrowRight', 'ArrowLeft'], 'b'],
    [['ArrowLeft'], 'b'],
    [['ArrowDown'], 'b'],
    [['ArrowUp', 'ArrowDown'], 'b'],
    [['ArrowUp', 'ArrowRight'], '#end'],
    [['ArrowUp', 'ArrowLeft'], 'h1'],
  ])('goes from where the mouse is by %j to %s', async (keys, wanted) => {
    const picked = start();
    mouse('pointermove', '.price b');
    for (const key of keys) press(key);
    press('Enter');
    const { selector = '' } = (await picked) ?? {};
    expect(selector && document.querySelector(selector)?.outerHTML).toBe(document.querySelector(wanted)?.outerHTML);
  });

  it('begins at the body where no mouse was, and Enter alone takes nothing', async () => {
    const nothing = start();
    press('Enter');
    expect(await nothing).toBeNull();
    const picked = start();
    press('ArrowDown');
    press('Enter');
    expect(document.querySelector((await picked)?.selector ?? '')?.tagName).toBe('MAIN');
  });

  it('says what to do in a status of its own, and outlines what would be taken', async () => {
    const made: HTMLElement[] = [];
    const attach = vi.spyOn(Element.prototype, 'attachShadow').mockImplementation(function (this: Element, options) {
      expect(options.mode).toBe('closed');
      attach.mockRestore();
      const root = this.attachShadow(options);
      vi.spyOn(root, 'append').mockImplementation((...nodes) => void made.push(...(nodes as HTMLElement[])));
      return root;
    });
    const picked = start();
    const [box, text] = made as [HTMLElement, HTMLElement];
    expect(text.textContent).toBe(invite);
    expect(text.getAttribute('role')).toBe('status');
    for (const part of [box, text]) {
      expect(part.style.position).toBe('fixed');
      expect(part.style.pointerEvents).toBe('none');
      expect(part.style.zIndex).toBe('2147483647');
    }
    mouse('pointermove', '.price');
    expect([box.style.left, box.style.top, box.style.width, box.style.height]).toEqual(['1px', '2px', '3px', '4px']);
    press('Escape');
    await picked;
    expect(overlay().tagName).toBe('BODY');
  });
});

describe('a selector for a field', () => {
  const of = (html: string, wanted: string) => {
    document.body.innerHTML = html;
    const found = selectorFor(document.querySelector(wanted) as Element);
    expect(found && document.querySelectorAll(found).length).toBe(1);
    return found;
  };

  it.each([
    ['<p class="price">a</p><p>b</p>', '.price', '.price'],
    ['<p id="cost">a</p><p>b</p>', 'p', '#cost'],
    ['<p itemprop="price">a</p><p>b</p>', 'p', '[itemprop="price"]'],
    ['<p data-testid="price">a</p><p>b</p>', 'p', '[data-testid="price"]'],
    ['<p role="note">a</p><p>b</p>', 'p', '[role="note"]'],
    ['<input name="offer"><input>', 'input', '[name="offer"]'],
  ])('of %s for %s is %s', (html, wanted, selector) => {
    expect(of(html, wanted)).toContain(selector.replace(/^\[(.*)="(.*)"\]$/, '$1="$2"'));
  });

  it.each(['item-1042', 'css-1ab2c3', 'sc-a1', 'jss12', 'svelte-x1', 'emotion-0', '_a1', 'x1y2z', 'a'.repeat(41)])(
    'never holds the name %s, which is of this page alone',
    (name) => {
      expect(of(`<p class="${name}">a</p><p>b</p>`, 'p')).not.toContain(name);
      expect(of(`<p id="${name}">a</p><p>b</p>`, 'p')).not.toContain(name);
    },
  );

  it('holds names that only look a little like it', () => {
    for (const name of ['item-42', 'css-price', 'h1-title', 'a'.repeat(40)])
      expect(of(`<p class="${name}">a</p><p>b</p>`, 'p')).toContain(name);
  });

  it('holds no long attribute, and none with the number of a piece', () => {
    expect(of(`<p itemprop="${'a'.repeat(59)}">a</p><p>b</p>`, 'p')).toContain('itemprop');
    expect(of(`<p itemprop="${'a'.repeat(60)}">a</p><p>b</p>`, 'p')).not.toContain('itemprop');
    expect(of('<p itemprop="price-1042">a</p><p>b</p>', 'p')).not.toContain('itemprop');
    expect(of('<p title="price">a</p><p>b</p>', 'p')).not.toContain('title');
  });

  it('is none for what stands in no page', () => {
    expect(selectorFor(document.createElement('p'))).toBeNull();
  });
});
