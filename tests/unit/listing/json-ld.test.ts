import { describe, expect, it } from 'vitest';
import { type Item, type ItemValue, isItem } from '../../../src/listing/structured/item';
import { joinItems } from '../../../src/listing/structured/join';
import { readJsonLd } from '../../../src/listing/structured/json-ld';
import { readMicrodata } from '../../../src/listing/structured/microdata';
import { readRdfa } from '../../../src/listing/structured/rdfa';
import { slices } from './gathered';
import { documentOf } from './page';

/** A thing as "Type id {name: values}", things in it by their types. */
const told = ({ types, id, properties, caveats }: Item): string => {
  const value = (one: ItemValue) => (isItem(one) ? `<${one.types.join('+')}>` : JSON.stringify(one));
  const named = [...properties].map(([name, values]) => `${name}: ${values.map(value).join(' ')}`).join(', ');
  return `${types.join('+')}${id === null ? '' : ` ${id}`} {${named}}${caveats.length > 0 ? ` ${caveats.join(' ')}` : ''}`;
};
const script = (text: string, type = 'application/ld+json') => `<script type="${type}">${text}</script>`;
const readAll = (...scripts: string[]) => readJsonLd([documentOf(scripts.join(''))], slices());
const items = async (value: unknown) => (await readAll(script(JSON.stringify(value)))).items.map(told);

describe('things of JSON-LD', () => {
  it.each<[string, unknown, string[]]>([
    [
      'one',
      { '@type': 'Product', name: 'Bag', price: 5, sold: false },
      ['Product {name: "Bag", price: 5, sold: false}'],
    ],
    ['by an older notation', { type: 'Product', id: ' #1 ' }, ['Product #1 {type: "Product", id: " #1 "}']],
    ['of several types', { '@type': ['Product', 'schema:Offer', 5] }, ['Product+Offer {}']],
    ['in a thing, and in lists', { '@type': 'A', a: [{ '@type': 'B' }, 'x'] }, ['A {a: <B> "x"}', 'B {}']],
    ['at the root of a list', [{ '@type': 'A' }, [{ '@type': 'B' }]], ['A {}', 'B {}']],
    [
      'in a graph, which holds none of them',
      { '@graph': [{ '@type': 'A' }], '@included': { '@type': 'B' } },
      [' {}', 'A {}', 'B {}'],
    ],
    ['a value with its language', { '@type': 'A', a: { '@value': 'x', '@language': 'fr' } }, ['A {a: "x"}']],
    [
      'a list of values',
      { '@type': 'A', a: { '@list': ['x', 'y'] }, b: { '@set': ['z'] } },
      ['A {a: "x" "y", b: "z"}'],
    ],
    ['no empty value', { '@type': 'A', a: null, '@context': 'x', '@index': 1 }, ['A {}']],
    ['no address of the vocabulary', { '@type': 'http://schema.org/A', 'schema:name': 'x' }, ['A {name: "x"}']],
    [
      'names in capitals, which are unusual',
      { '@type': 'A', Name: 'x', Price: 5 },
      ['A {name: "x", price: 5} unusual-names'],
    ],
    ['no name that is dangerous', { '@type': 'A', constructor: 'x', a: 1 }, ['A {a: 1}']],
    ['no id that is empty or none', { '@type': 'A', '@id': ' ' }, ['A {}']],
    ['an id in capitals', { '@TYPE': 'A', '@ID': '#1' }, ['A #1 {}']],
    [
      'twenty types at most',
      { '@type': Array.from({ length: 21 }, (_, at) => `T${at}`) },
      [`${Array.from({ length: 20 }, (_, at) => `T${at}`).join('+')} {}`],
    ],
  ])('%s', async (_, value, wanted) => {
    expect(await items(value)).toEqual(wanted);
  });

  it('stand where they are found', async () => {
    const { items: found } = await readAll(
      script('{}'),
      script(JSON.stringify({ '@type': 'A', offers: { a: { b: {} } } })),
    );
    expect(found.map(({ where }) => where)).toEqual([
      'json-ld 1',
      'json-ld 2',
      'json-ld 2 > offers',
      'json-ld 2 > offers > a',
      'json-ld 2 > offers > a > b',
    ]);
    const [, long] = (await readAll(script(JSON.stringify({ ['n'.repeat(41)]: {} })))).items;
    expect(long?.where).toBe(`json-ld 1 > ${'n'.repeat(40)}`);
    expect(long?.holder?.property).toBe('n'.repeat(41));
  });

  it('are repaired where a script is broken, and the others read', async () => {
    const { items: found, notes } = await readAll(
      script('{"@type":"A",}'),
      script('nothing'),
      script('  '),
      script('{"@type":"B"}'),
    );
    expect(found.map(told)).toEqual(['A {} repaired', 'B {}']);
    expect(notes).toEqual([{ code: 'data-unreadable', where: 'json-ld 2', count: 0 }]);
  });

  it('are read from scripts that are so called', async () => {
    const types = [
      ' application/ld+json; charset=utf-8',
      'APPLICATION/LD+JSON',
      'text/ld+json',
      'application/ld+jsonx',
      'x application/ld+json',
    ];
    const read = await Promise.all(
      types.map(async (type) => (await readAll(script('{"@type":"A"}', type))).items.length),
    );
    expect(read).toEqual([1, 1, 0, 0, 0]);
  });

  it.each<[string, (inner: unknown) => unknown, number]>([
    ['a thing in a thing', (inner) => ({ a: inner }), 1],
    ['a list', (inner) => [inner], 1],
    ['a list of values in a thing', (inner) => ({ '@list': inner }), 1],
    ['a value in a thing', (inner) => ({ '@value': inner }), 1],
  ])('are followed sixty-four levels deep: %s', async (_, wrap, levels) => {
    const notes = async (deep: number) => {
      let value: unknown = { '@type': 'A' };
      for (let level = 0; level < deep; level += 1) value = wrap(value);
      return (await readAll(script(JSON.stringify(value)))).notes;
    };
    expect(await notes(63 / levels)).toEqual([]);
    expect(await notes(64 / levels)).toEqual([{ code: 'data-cut', where: 'json-ld 1', count: 64 }]);
  });

  it('are read in fifty thousand parts', async () => {
    const notes = async (parts: number) => (await readAll(script(JSON.stringify(Array(parts).fill(1))))).notes;
    expect(await notes(49_999)).toEqual([]);
    expect(await notes(50_000)).toEqual([{ code: 'data-cut', where: 'json-ld 1', count: 0 }]);
  });
});

describe('things of microdata and RDFa', () => {
  const micro = async (html: string) => (await readMicrodata(documentOf(html), slices())).map(told);
  const rdfa = async (html: string) => (await readRdfa(documentOf(html), slices())).map(told);

  it('have types and names with blanks around them', async () => {
    expect(await micro('<p itemscope itemtype=" schema:A  B " itemid=" #1 "><i itemprop=" a  b ">x</i></p>')).toEqual([
      'A+B #1 {a: "x", b: "x"}',
    ]);
    expect(await rdfa('<div vocab="http://schema.org/"><p typeof=" A  B "><i property=" a ">x</i></p></div>')).toEqual([
      'A+B {a: "x"}',
    ]);
  });

  it.each([
    ['the content that is given', '<i itemprop="a" content="y">x</i>', '"y"'],
    ['the address of a link', '<a itemprop="a" href="/x">x</a>', '"/x"'],
    ['of a picture', '<img itemprop="a" src="/x.jpg">', '"/x.jpg"'],
    ['that a script has put elsewhere', '<img itemprop="a" data-src="/x.jpg">', '"/x.jpg"'],
    ['in the other attribute', '<link itemprop="a" src="/x">', '"/x"'],
    ['of nothing', '<img itemprop="a">', '""'],
    ['a value', '<data itemprop="a" value="5">x</data>', '"5"'],
    ['a value in words', '<meter itemprop="a">five</meter>', '"five"'],
    ['a time', '<time itemprop="a" datetime="2026">x</time>', '"2026"'],
    ['a time in words', '<time itemprop="a">x</time>', '"x"'],
    ['words', '<i itemprop="a">x</i>', '"x"'],
    ['a name of the other notation', '<meta property="a" content="x">', '"x"'],
  ])('have as value %s', async (_, html, value) => {
    expect(await micro(`<p itemscope itemtype="T">${html}</p>`)).toEqual([`T {a: ${value}}`]);
  });

  it('reach no cycle, and none through so many things', async () => {
    const nested = (deep: number) =>
      `${'<div itemscope itemtype="T" itemprop="in">'.repeat(deep)}<i itemprop="a">x</i>${'</div>'.repeat(deep)}`;
    const last = async (deep: number) => (await micro(nested(deep))).at(-2);
    expect([await last(255), await last(256)]).toEqual(['T {in: <T>}', 'T {in: <T>}']);
  });
});

describe('data that is told in several places', () => {
  const thing = (over: object) => ({ '@type': 'Product', '@id': '#p', ...over });

  it('is joined by its id: what any says, once each', async () => {
    const { items: found } = await readAll(
      script(JSON.stringify([thing({ a: 1, b: 'x' }), thing({ '@type': 'Thing', a: [1, 2] })])),
    );
    joinItems(found);
    expect(found.map(told)).toEqual(Array(2).fill('Product+Thing #p {a: 1 2, b: "x"}'));
    expect(found[0]?.properties).toBe(found[1]?.properties);
  });

  it('makes an offer one of the product that it names, once', async () => {
    const offer = { '@type': 'Offer', itemOffered: '#p' };
    const { items: found } = await readAll(
      script(
        JSON.stringify([
          thing({ offers: { '@type': 'Offer', itemOffered: { '@id': '#p' } } }),
          offer,
          { '@type': 'Thing', itemOffered: '#p' },
        ]),
      ),
    );
    joinItems(found);
    expect(told(found[0] as Item)).toBe(
      'Product #p {offers: <Offer> <Offer>, itemoffered: }'.replace(', itemoffered: ', ''),
    );
    expect((found[0] as Item).properties.get('offers')).toHaveLength(2);
  });
});
