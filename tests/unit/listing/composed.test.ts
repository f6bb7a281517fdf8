// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { readFacts, readListing, readPage } from '../../../src/listing';
import { fingerprint } from '../../../src/listing/page/fingerprint';
import { lookBySource } from '../../../src/listing/page/look-by-source';
import type { PageOptions } from '../../../src/listing/read-page';

const url = 'https://attic-arcade.example/item/1042';
const now = '2026-03-01T12:00:00Z';
const heading = '<h1>Ondrasse Palma Tote</h1>';
const read = (options: Partial<PageOptions> = {}) =>
  readPage(document, { url, now, look: lookBySource(document), ...options });
const textOf = async (options?: Partial<PageOptions>) =>
  (await read(options)).listing.text.split('\n').filter((line) => line !== '');

beforeEach(() => {
  document.head.innerHTML = '<title>Ondrasse Palma Tote</title>';
  document.body.innerHTML = heading;
});

/** An element of the page with a shadow tree. */
function host(mode: 'open' | 'closed', inside: string, light = '', tag = 'x-card') {
  const element = document.createElement(tag);
  element.innerHTML = light;
  const root = element.attachShadow({ mode });
  root.innerHTML = inside;
  document.body.append(element);
  return { element, root };
}

describe('a page of parts', () => {
  it('reads open shadow trees in the place of their hosts, with what is slotted into them', async () => {
    host(
      'open',
      '<p>shadow</p><slot></slot><p>between</p><slot name="end">own end</slot><slot name="gone">own words</slot>',
      'light <b slot="end">end</b><i slot="nowhere">lost</i> words',
    );
    expect(await textOf()).toEqual(['Ondrasse Palma Tote', 'shadow', 'light words', 'between', 'endown words']);
  });

  it('lets a slot show its own words where only blanks would be slotted', async () => {
    host('open', '<slot>own words</slot>', '  \n ');
    expect((await textOf())[1]).toBe('own words');
  });

  it('reads a tree inside a tree, and a slot handed on', async () => {
    const { root } = host('open', '<p>outer</p>', '<b>handed</b>');
    const inner = document.createElement('div');
    inner.innerHTML = '<slot></slot>';
    root.append(inner);
    inner.attachShadow({ mode: 'open' }).innerHTML = '<p>inner</p><slot></slot>';
    expect(await textOf()).toEqual(['Ondrasse Palma Tote', 'outer', 'inner', 'handed']);
  });

  it('reads data and pictures of shadow trees', async () => {
    host(
      'open',
      '<script type="application/ld+json">{"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"}</script><img src="/p/a.jpg">',
    );
    const listing = readFacts(await read());
    expect(listing.colour.map(({ value }) => value)).toEqual(['Tan']);
    expect(listing.photos.map((photo) => photo.url)).toEqual(['https://attic-arcade.example/p/a.jpg']);
  });

  it('asks for closed trees where one is likely, and goes on where the answer fails', async () => {
    const { element, root } = host('closed', '<p>closed words</p>', 'light');
    expect(await textOf()).toEqual(['Ondrasse Palma Tote', 'light']);
    const asked: string[] = [];
    const closedShadowRoot = (one: Element) => {
      asked.push(one.localName);
      return one === element ? root : null;
    };
    document.body.append(document.createElement('section'), document.createElement('img'));
    document.body.insertAdjacentHTML('beforeend', '<div>full</div>');
    expect(await textOf({ closedShadowRoot })).toEqual(['Ondrasse Palma Tote', 'closed words', 'full']);
    expect(asked).toEqual(['x-card', 'section']);
    const failing = () => {
      throw new Error('no');
    };
    expect(await textOf({ closedShadowRoot: failing })).toEqual(['Ondrasse Palma Tote', 'light', 'full']);
  });

  it('reads frames of its own origin in their place, and asks for the others', async () => {
    const frame = document.createElement('iframe');
    document.body.append(frame);
    document.body.insertAdjacentHTML('beforeend', '<p>behind</p>');
    const inner = frame.contentDocument as Document;
    inner.body.innerHTML = '<p>framed</p><img src="/p/framed.jpg">';
    const { listing } = await read();
    expect(listing.text.split(/\n+/)).toEqual(['Ondrasse Palma Tote', 'framed', 'behind']);
    expect(listing.photos.map((photo) => photo.url)).toEqual(['https://attic-arcade.example/p/framed.jpg']);
  });

  it('reads a picture that is kept as text for readers without scripts', async () => {
    const keep = (text: string) => {
      const element = document.createElement('noscript');
      element.textContent = text;
      return element;
    };
    const link = document.createElement('a');
    link.href = 'https://attic-arcade.example/item/7';
    link.append(keep('<img src="/p/elsewhere.jpg">'));
    document.body.append(
      keep('<img src="/p/a.jpg" alt="front"><img src="/p/logo.jpg">'),
      keep('no picture'),
      keep(`<img src="/p/long.jpg">${' '.repeat(20_000)}`),
      keep(`<img src="/p/b.jpg">${' '.repeat(20_000 - '<img src="/p/b.jpg">'.length)}`),
      link,
    );
    const { listing } = await read();
    expect(listing.photos.map(({ url: address, alt }) => [address, alt])).toEqual([
      ['https://attic-arcade.example/p/a.jpg', 'front'],
      ['https://attic-arcade.example/p/b.jpg', ''],
    ]);
    expect(listing.text).toBe('Ondrasse Palma Tote');
  });
});

describe('a page that becomes another while it is read', () => {
  const changing = (times: number) => {
    let left = times;
    return async () => {
      if (left-- > 0) document.title = `Another ${left}`;
    };
  };
  const clock = () => {
    let ms = 0;
    return () => (ms += 50);
  };

  it('is read again, up to three times, and then said to be changing', async () => {
    const notes = async (times: number) => {
      document.title = 'Ondrasse Palma Tote';
      const extract = await read({ clock: clock(), pause: changing(times) });
      return extract.notes.map(({ code, where, count }) => `${code} ${where} ${count}`);
    };
    expect(await notes(0)).toEqual([]);
    expect(await notes(1)).toEqual([]);
    expect(await notes(10_000)).toEqual(['page-changing page 0']);
  });

  it('is another by its path, title, headings, prices or data, and by nothing else', () => {
    const at = (address = url) => fingerprint(document, address);
    document.body.innerHTML = `${heading}<p class="price">€1</p><b itemprop="price">2</b><p class="note">x</p>`;
    const first = at();
    const changed = (change: () => void) => {
      const { innerHTML } = document.documentElement;
      change();
      const other = at() !== first;
      document.documentElement.innerHTML = innerHTML;
      return other;
    };
    const set = (selector: string, text: string) => () => {
      (document.querySelector(selector) as Element).textContent = text;
    };
    expect(at(`${url}?sort=1#top`)).toBe(first);
    expect(at(`${url}/2`)).not.toBe(first);
    expect(changed(set('title', 'Other'))).toBe(true);
    expect(changed(set('h1', 'Other'))).toBe(true);
    expect(changed(set('h1', '  Ondrasse Palma Tote '))).toBe(false);
    expect(changed(set('.price', '€3'))).toBe(true);
    expect(changed(set('[itemprop]', '3'))).toBe(true);
    expect(changed(set('.note', 'y'))).toBe(false);
    expect(
      changed(() => document.body.insertAdjacentHTML('beforeend', '<script type="application/LD+JSON">{}</script>')),
    ).toBe(true);
    expect(changed(() => document.body.insertAdjacentHTML('beforeend', '<script>x</script>'))).toBe(false);
  });

  it('is compared by eight headings, of each two hundred characters', () => {
    const of = (html: string) => {
      document.body.innerHTML = html;
      return fingerprint(document, url);
    };
    const nine = (last: string, eighth = 'x') => `${'<h1>x</h1>'.repeat(7)}<h1>${eighth}</h1><h1>${last}</h1>`;
    expect(of(nine('a'))).toBe(of(nine('b')));
    expect(of(nine('a', 'x'))).not.toBe(of(nine('a', 'y')));
    const long = 'w'.repeat(199);
    expect(of(`<h1>${long}xa</h1>`)).toBe(of(`<h1>${long}xb</h1>`));
    expect(of(`<h1>${long}a</h1>`)).not.toBe(of(`<h1>${long}b</h1>`));
  });
});

describe('a tab that shows a file', () => {
  const showing = async (contentType: string) => {
    Object.defineProperty(document, 'contentType', { value: contentType, configurable: true });
    document.body.innerHTML = '';
    const listing = await readListing(document, { url, now });
    return [listing.kind, ...listing.problems.map(({ code }) => code)];
  };
  it.each([
    ['image/jpeg', ['none', 'page-is-picture']],
    ['application/pdf', ['none', 'page-is-pdf']],
    ['image/svg+xml', ['none', 'no-listing']],
    ['text/html', ['none', 'no-listing']],
  ])('%s says %j', async (contentType, wanted) => {
    expect(await showing(contentType)).toEqual(wanted);
  });
});
