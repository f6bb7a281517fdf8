import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { claimSchema, findClaims } from '../../../src/claim';
import { builtInMakers } from '../../../src/maker';
import { listingOf, ondrasse, shortClaim } from './listing-of';

const description = 'Made in Belgium in 1994. Olive twill lining, date code KV0915. Never used. No returns.';

describe('claims of a whole listing', () => {
  it('carry their kind, the exact words and where these stand', () => {
    const claims = findClaims(listingOf('Ondrasse Carryall 30, early 90s', description), [ondrasse]);
    expect(claims.map((claim) => [claim.kind, claim.words, claim.at])).toEqual([
      ['maker', 'Ondrasse', { field: 'title', start: 0, end: 8 }],
      ['made', 'early 90s', { field: 'title', start: 22, end: 31 }],
      ['made', '1994', { field: 'description', start: 19, end: 23 }],
      ['condition', 'Never used', { field: 'description', start: 63, end: 73 }],
      ['material', 'Olive twill lining', { field: 'description', start: 25, end: 43 }],
      ['model', 'Carryall 30', { field: 'title', start: 9, end: 20 }],
      ['origin', 'Belgium', { field: 'description', start: 8, end: 15 }],
      ['code', 'KV0915', { field: 'description', start: 55, end: 61 }],
      ['returns', 'No returns', { field: 'description', start: 75, end: 85 }],
    ]);
  });

  it('are the same each time and fit the schema', () => {
    const listing = listingOf('Ondrasse Carryall 30', description);
    const claims = findClaims(listing, [ondrasse]);
    expect(findClaims(listing, [ondrasse])).toEqual(claims);
    expect(claimSchema.array().parse(claims)).toEqual(claims);
  });

  it('take the visible text when there is no description', () => {
    const claims = findClaims(listingOf('', '', 'en', { text: 'Made in Spain.' }), []);
    expect(claims.map((claim) => [shortClaim(claim), claim.at.field])).toEqual([['origin ES', 'text']]);
  });

  it('take what a reply says of what the title names for said of the piece', () => {
    const worn = (title: string) =>
      findClaims(listingOf(title, ''), [], ['The belt has scratches.']).map(({ kind, at }) => [kind, at.field]);
    expect(worn('Belt of brown leather').filter(([kind]) => kind === 'wear')).toEqual([['wear', 'reply']]);
    expect(worn('Bag of brown leather').filter(([kind]) => kind === 'wear')).toEqual([]);
  });

  it('hold a size back only for a code in the same reply', () => {
    const told = (replies: string[]) =>
      findClaims(listingOf('Tessaro Vell satchel', ''), builtInMakers, replies).flatMap(({ kind, words }) =>
        kind === 'code' || kind === 'measure' ? [`${kind} ${words}`] : [],
      );
    const code = 'Number inside reads 14 C50M37.';
    expect(told([code])).toEqual(['code 14 C50M37']);
    expect(told([code, 'I say it is 31 cm wide.'])).toEqual(['measure 31 cm', 'code 14 C50M37']);
  });

  it.each<[string, string, string[]]>([
    ['en', 'Payment without buyer protection', ['without buyer protection']],
    ['en', 'No buyer protection', ['No buyer protection']],
    ['en', 'Not as friends and family', []],
    ['en', 'No crypto, no gift cards', []],
    ['en', 'Gift cards, please', ['Gift cards']],
  ])('tell what asks for a payment outside, and not what refuses one (%s): %s', (language, said, words) => {
    const found = findClaims(listingOf('', said, language), []).filter(({ kind }) => kind === 'payment-outside');
    expect(found.map((claim) => claim.words)).toEqual(words);
  });

  it('take the plural of a model that ends in a number, and no other', () => {
    const maker = { ...ondrasse, models: [{ name: 'Carryall 30' }, { name: 'Royal' }] };
    const models = (said: string) =>
      findClaims(listingOf('', said), [maker]).flatMap((claim) => (claim.kind === 'model' ? [claim.model] : []));
    expect(models('One of my Carryall 30s.')).toEqual(['Carryall 30']);
    expect(models('A Royal.')).toEqual(['Royal']);
    expect(models('One of my Royals.')).toEqual([]);
  });

  it('say once what stands in the visible text, where that is read in the description’s place', () => {
    const found = findClaims(listingOf('Bag', '', 'en', { text: 'Bag\nReal leather, some scratches.' }), []);
    expect(found.map(shortClaim)).toEqual(['body = leather', 'wear', 'leather']);
  });

  it('are none for a listing without text or data', () => {
    expect(findClaims(listingOf('', ''), [ondrasse])).toEqual([]);
  });

  it("take maker, model, price, condition, material and return terms from the page's own data", () => {
    const from = { origin: 'json-ld', where: 'script', confidence: 0.9 } as const;
    const price = { kind: 'sale', minor: 45000, exponent: 2, currency: 'EUR', currencies: ['EUR'] } as const;
    const claims = findClaims(
      listingOf('', '', 'en', {
        maker: [{ ...from, value: 'ONDRASSE BRUXELLES' }],
        model: [{ ...from, value: 'carry-all 30' }],
        price: [{ ...from, value: { ...price, currencies: ['EUR'] }, words: '450.00' }],
        condition: [{ ...from, value: 'new' }],
        material: [{ ...from, value: 'Leather' }],
        returns: [{ ...from, value: { accepted: false, days: null, words: 'no returns' } }],
      }),
      [ondrasse],
    );
    expect(claims.map((claim) => [shortClaim(claim), claim.at.field])).toEqual([
      ['maker Ondrasse', 'data'],
      ['condition new', 'data'],
      ['body = leather', 'data'],
      ['model Carryall 30', 'data'],
      ['price sale 45000', 'data'],
      ['returns no', 'data'],
    ]);
  });

  it('keep a maker that no file knows', () => {
    const maker = [{ value: 'Nobody & Daughters', origin: 'json-ld', where: 'script', confidence: 0.9 } as const];
    expect(findClaims(listingOf('', '', 'en', { maker }), [ondrasse]).map(shortClaim)).toEqual([
      'maker Nobody & Daughters',
    ]);
  });

  it('stand in the characters of the source even when bidi marks and soft hyphens are in it', () => {
    const text = 'Never\u00a0used, made in\u200f Bel\u00adgium.';
    const [claim] = findClaims(listingOf('', text), []);
    expect(claim?.words).toBe('Never\u00a0used');
    expect(text.slice(claim?.at.start, claim?.at.end)).toBe(claim?.words);
  });
});

describe('whatever a listing says', () => {
  const words = fc.constantFrom(
    'not',
    'never used',
    'new',
    'olive twill',
    'lining',
    'brass hardware',
    'Ondrasse',
    'Ondrasse style',
    'Carryall 30',
    '1994',
    'made in',
    'Belgium',
    'bought in 2012',
    'date code KV0915',
    'no code',
    'outlet',
    'bank transfer',
    'no returns',
    '1:1',
    '30 x 21 cm',
    'similar to',
    ',',
    '.',
    '\n',
    'a@b.example',
    '未使用',
    '刻印なし',
    'Futter aus',
    'doublure en',
    '\u200f',
    'İ',
    'e\u0301',
    '😀',
    '450 €',
    'circa',
  );
  const texts = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 300 }),
    fc.array(words, { maxLength: 40 }).map((parts) => parts.join(' ')),
    fc.array(words, { maxLength: 20 }).map((parts) => parts.join('')),
  );
  const language = fc.constantFrom(null, 'en', 'de', 'fr', 'it', 'es', 'nl', 'ja');

  it('nothing throws, words are slices of their field, ids differ, and the schema holds', () => {
    fc.assert(
      fc.property(texts, texts, language, (title, text, tag) => {
        const listing = listingOf(title, text, tag);
        const claims = findClaims(listing, [...builtInMakers]);
        for (const claim of claims) {
          const source = claim.at.field === 'title' ? title : text;
          expect(source.slice(claim.at.start, claim.at.end)).toBe(claim.words);
        }
        expect(new Set(claims.map((claim) => claim.id)).size).toBe(claims.length);
        expect(claimSchema.array().safeParse(claims).success).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a date with “since”', () => {
  const made = (words: string, language: string) =>
    findClaims(listingOf('Ondrasse bag', words, language), [ondrasse]).filter(({ kind }) => kind === 'made');
  it.each([
    ['en', 'In our family since the 1980s.'],
    ['en', 'A house of saddlers since the 1920s.'],
    ['de', 'Ein Haus der Sattler, seit den 1920er Jahren.'],
    ['fr', 'Maison fondée, depuis les années 1920.'],
    ['nl', 'Een huis, sinds de jaren 1920.'],
  ])('is no date of making, a decade neither: %s, %s', (language, words) => {
    expect(made(words, language)).toEqual([]);
  });

  it('quotes a hedged name with its hedge, accents and all', () => {
    const words = (text: string) =>
      findClaims(listingOf('', text, 'fr'), [ondrasse]).flatMap((claim) =>
        claim.kind === 'hedged-authorship' ? [claim.words] : [],
      );
    expect(words('Sac attribué à Ondrasse.')).toEqual(['attribué à Ondrasse']);
    expect(words('Un Ondrasse réplique.')).toEqual(['Ondrasse réplique']);
  });
});

describe('dates that the seller asks or supposes', () => {
  const datesOf = (said: string, language: string) =>
    findClaims(listingOf('', said, language), []).flatMap((claim) =>
      claim.kind === 'made' ? [`${claim.span.about ? 'about ' : ''}${claim.span.from?.slice(0, 4)}`] : [],
    );
  it.each([
    ['Made in 1990?', 'en'],
    ['Is it from the 1990s?', 'en'],
    ['Hergestellt 1990?', 'de'],
    ['Fabriqué en 1990 ?', 'fr'],
    ['I do not know if it was made in 1990', 'en'],
  ])('asked, nothing is stated: %s', (said, language) => expect(datesOf(said, language)).toEqual([]));
  it.each([
    ['I think it was made in 1990.', 'en'],
    ['Made in 1990, not sure.', 'en'],
    ['Hergestellt 1990, glaube ich.', 'de'],
    ['Fabriqué en 1990, je crois.', 'fr'],
    ['Prodotta nel 1990, credo.', 'it'],
    ['Creo que fue fabricado en 1990.', 'es'],
    ['Gemaakt in 1990, denk ik.', 'nl'],
    ['1990年製と思います。', 'ja'],
  ])('supposed, it is about that year: %s', (said, language) =>
    expect(datesOf(said, language)).toEqual(['about 1990']),
  );
  it('what is known stays as it is', () =>
    expect(datesOf('Made in 1990. I think it is lovely.', 'en')).toEqual(['1990']));
});
