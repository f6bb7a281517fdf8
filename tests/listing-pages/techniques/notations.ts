import type { TechniquePage } from '../reading';
import { tote, withData } from './data';

const line = (text: string): string => withData(text);
const deep = (levels: number): string =>
  `${'{"isPartOf":'.repeat(levels)}{"@type":"Product","name":"Deep"}${'}'.repeat(levels)}`;

/** How JSON-LD, microdata and RDFa are written, and how they are broken. */
export const notations: Record<string, TechniquePage> = {
  'a graph whose parts name each other': line(
    JSON.stringify({
      '@context': { '@vocab': 'https://schema.org/' },
      '@graph': [
        { '@id': '#offer', '@type': 'Offer', price: '540', priceCurrency: 'EUR', itemOffered: { '@id': '#bag' } },
        { '@id': '#bag', '@type': 'Product', name: 'Ondrasse Palma Tote', brand: { '@id': '#maker' } },
        { '@id': '#bag', color: 'Tan', '@type': 'IndividualProduct' },
        { '@id': '#maker', '@type': 'Brand', name: 'Ondrasse' },
        { '@type': 'WebPage', name: 'Page' },
      ],
      '@included': { '@type': 'Product', name: 'Other bag' },
    }),
  ),
  'an offer that names its product by its id in text, one that names itself': withData([
    { '@id': '#bag', '@type': 'Product', name: 'Ondrasse Palma Tote' },
    { '@type': 'Offer', price: '10', priceCurrency: 'EUR', itemOffered: '#bag' },
    { '@type': 'AggregateOffer', lowPrice: '11', priceCurrency: 'EUR', itemOffered: { '@id': '#bag' } },
    { '@id': '#self', '@type': 'Offer', price: '12', itemOffered: '#self' },
    { '@type': 'Thing', price: '13', itemOffered: '#bag' },
  ]),
  'the same id in two scripts, one of them repaired': withData([
    { '@id': '#bag', '@type': 'Product', name: 'Ondrasse Palma Tote', color: ['Tan'] },
    '{"@id": "#bag", "@type": "Product", "color": ["Tan", "Brown"], "material": "Calf",}',
    { '@id': ' #bag ', model: 'Palma', image: '/p/a.jpg' },
  ]),
  'lists, sets and literals': withData({
    '@type': 'schema:Product',
    name: { '@value': 'Ondrasse Palma Tote', '@language': 'en' },
    color: { '@list': ['Tan', { '@value': 'Brown' }] },
    material: { '@set': ['Calf', 7, true, null] },
    'http://schema.org/model': 'Palma',
    'https://www.schema.org/mpn': 'M-1',
    '@index': 3,
  }),
  'names in capitals, types under type, id under id': withData({
    type: ['http://schema.org/Product', 5],
    id: '/item/1042',
    Name: 'Ondrasse Palma Tote',
    Brand: 'Ondrasse',
  }),
  'keys that reach for a prototype': line(
    '{"@type":"Product","__proto__":{"name":"Bad"},"constructor":"x","prototype":"y","name":"Ondrasse Palma Tote"}',
  ),
  'roots in an array, a root that is a word': withData([
    [tote, { '@type': 'Product', name: 'Other bag entirely' }],
    '"words"',
    '7',
  ]),
  'an empty script, one of another type, and one with a charset': `<html><head><script type="application/ld+json">  </script>
    <script type="text/ld+json">{"@type":"Product","name":"No"}</script>
    <script type=" application/LD+JSON; charset=utf-8">{"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"}</script></head><body><h1>Ondrasse Palma Tote</h1></body></html>`,
  'trailing commas and comments': line(
    '// the piece\n{"@type":"Product", /* its name */ "name":"Ondrasse Palma Tote",\n"color":["Tan",],}',
  ),
  'single quotes and bare keys': line(
    "{'@type':'Product', name: 'Ondrasse Palma Tote', color: `Tan`, mpn: 12.50, gtin: undefined, sku: M-1}",
  ),
  'an inner quote and a raw new line': line(
    '{"@type":"Product","name":"Ondrasse Palma Tote","description":"A 12" wide bag,\nof calf","color":"Tan"}',
  ),
  'missing commas between lines': line('{"@type":"Product"\n"name":"Ondrasse Palma Tote"\n"color":"Tan"}'),
  'two roots and a cut end': line(
    '{"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"}{"@type":"Product","name":"Other","material":"Calf',
  ),
  'escapes good and bad': line(
    '{"@type":"Product","name":"Ondrasse Palma Tote","color":"T\\u0061n\\q","material":"Calf\\tand\\nbrass\\/x\\u00zz",}',
  ),
  'a CDATA section': line('//<![CDATA[\n{"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"}\n//]]>'),
  'a CDATA section in a comment of style': line(
    '/*<![CDATA[*/{"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"}/*]]>*/',
  ),
  'an HTML comment around, and one before': withData([
    '<!-- {"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"} -->',
    '<!-- made by hand -->{"@type":"Product","name":"Ondrasse Palma Tote","material":"Calf"}',
  ]),
  'an assignment and a byte order mark': line(
    '\uFEFF var piece = {"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"};',
  ),
  'quotes as entities': line(
    '{&quot;@type&quot;:&quot;Product&quot;,&quot;name&quot;:&quot;Ondrasse Palma Tote&quot;,&quot;color&quot;:&quot;Tan&quot;}',
  ),
  'nothing to be repaired': line('this is { not: '),
  'only words': line('no data here'),
  'data as deep as is read': line(deep(63)),
  'data one level deeper': line(deep(64)),
  'microdata with every kind of value': `<html><body><main itemscope itemtype="https://schema.org/Product" itemid=" /item/1042 " id="piece">
    <h1 itemprop="name">Ondrasse Palma Tote</h1>
    <meta itemprop="color" content="Tan"><link itemprop="itemCondition" href="https://schema.org/UsedCondition">
    <a itemprop="image" href="/p/a.jpg">a</a><img itemprop="image" src="/p/b.jpg"><img itemprop="image" data-src="/p/c.jpg"><source itemprop="image" src="/p/d.jpg">
    <object itemprop="image" data="/p/e.jpg"></object><video itemprop="image" src="/p/f.jpg"></video><area itemprop="image" href="/p/g.jpg"><embed itemprop="image" src="/p/h.jpg">
    <audio itemprop="image" src="/p/i.jpg"></audio><track itemprop="image" src="/p/j.jpg"><iframe itemprop="image" src="/p/k.jpg"></iframe><img itemprop="image" href="/p/l.jpg"><a itemprop="image" src="/p/m.jpg">m</a><img itemprop="image">
    <data itemprop="mpn" value="M-1">one</data><meter itemprop="sku" value="2">two</meter><data itemprop="model">Palma</data>
    <div itemprop="description">Calf leather,<br>made <b>by hand</b>.<script>x</script><p>Second</p></div><span itemprop="material brand" content="Ondrasse">x</span>
    <div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><span itemprop="price" content="540.00">540</span><meta itemprop="priceCurrency" content="EUR"><time itemprop="validFrom" datetime="2026-01-02">then</time></div>
    <div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><span itemprop="price">530</span><time itemprop="validFrom">2026-01-04</time></div></main></body></html>`,
  'microdata that refers elsewhere, and to itself': `<main><h1>Ondrasse Palma Tote</h1><div itemscope itemtype="http://schema.org/Product" itemref="name  more gone" id="own"><span itemprop="color">Tan</span></div>
    <p id="name" itemprop="name">Ondrasse Palma Tote</p><div id="more"><span itemprop="material">Calf</span><div itemprop="brand" itemscope itemtype="Brand"><b itemprop="name">Ondrasse</b></div></div>
    <div itemscope itemtype="Thing" id="loop" itemref="loop" itemprop="isPartOf"></div><p id="name">twice</p></main>`,
  'a bare property inside microdata': `<main itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">Ondrasse Palma Tote</h1><meta property="color" content="Tan"><meta property="og:color" content="Red">
    <div vocab="https://schema.org/" typeof="Product"><meta property="name" content="Ondrasse Palma Tote"><meta property="material" content="Calf"></div></main>`,
  'RDFa with vocabulary, prefixes and relations': `<html prefix="s: https://schema.org/ og: http://ogp.me/ns#"><body vocab="http://schema.org/"><main typeof="Product" resource="#bag"><h1 property="name">Ondrasse Palma Tote</h1>
    <span property="s:color">Tan</span><span property="schema:material">Calf</span><span property="gr:hasBrand">No</span><span property="nope:model">No</span><span property="https://schema.org/model">Palma</span>
    <span property="mpn sku" content="M-1">x</span><a property="image" resource="/p/a.jpg">a</a><img property="image" src="/p/b.jpg">
    <div rel="offers"><div typeof="s:Offer"><b property="price">540</b><i property="priceCurrency" content="EUR"></i></div></div>
    <div property="brand" typeof="Brand"><b property="name">Ondrasse</b></div></main><div about="#bag" property="sku">SKU-2</div></body></html>`,
  'RDFa without a vocabulary':
    '<main typeof="Product"><h1 property="name">Ondrasse Palma Tote</h1><b property="schema:color">Tan</b></main><p property="model">Palma</p>',
  'subjects that are no things':
    '<main about="#a"><h1 property="schema:name">Ondrasse Palma Tote</h1></main><p resource="#b">x</p>',
  'two notations of one piece': `<html><head><script type="application/ld+json">{"@type":"Product","name":"Ondrasse Palma Tote","color":"Tan"}</script></head><body>
    <main itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">Ondrasse Palma Tote</h1><meta itemprop="material" content="Calf"><img itemprop="image" src="/p/a.jpg"></main>
    <div itemscope itemtype="https://schema.org/Product"><b itemprop="name">Another thing entirely</b><meta itemprop="material" content="Felt"></div></body></html>`,
};
