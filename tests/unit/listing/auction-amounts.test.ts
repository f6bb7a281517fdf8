import { expect, it } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/listing/draft';
import type { Candidate, Origin, Price } from '../../../src/listing/types';
import { readAuction } from '../../../src/listing/visible/auction';

const hints = { language: 'en', domain: 'attic-arcade.example', now: '2026-03-01' };

const priced = (minor: number, origin: Origin, confidence: number, kind: Price['kind'] = 'sale'): Candidate<Price> => ({
  value: { kind, minor, exponent: 2, currency: 'EUR', currencies: ['EUR'] },
  origin,
  where: 'before',
  confidence,
});
const told = ({ value, origin, where, confidence, words, caveats }: Candidate<Price>): string =>
  [value.kind, value.minor, origin, where, confidence, words ?? '-', ...(caveats ?? [])].join(' ');

/** What lines make of a draft: whether it is an auction, its amounts and its ends. */
function read(lines: string[], before: Partial<Draft> = {}, language: string | null = 'en') {
  const draft = { ...emptyDraft(), ...structuredClone(before) };
  const auction = readAuction(lines, draft, { ...hints, ...(language === null ? {} : { language }) });
  const ends = draft.ends?.map(({ value, words, confidence }) => `${value.from} ${confidence} ${words}`);
  return { auction, amounts: draft.price.map(told), ...(ends ? { ends } : {}) };
}
const seen = (text: string, minor: number, label = text) =>
  `sale ${minor} visible text: ${label} 0.93 ${text.replace(/^.*?(?=€)/, '')} current-bid`;
const amount = (kind: string, minor: number, words: string) => `${kind} ${minor} visible text 0.4 ${words}`;

it.each<[string, string[], Partial<Draft>, ReturnType<typeof read>]>([
  ['nothing', [], {}, { auction: false, amounts: [] }],
  ['a bid alone', ['Current bid €5.00'], {}, { auction: false, amounts: [] }],
  [
    'a bid where bids are counted',
    ['Current bid €5.00'],
    { bids: [{ value: 0, origin: 'visible', where: 'text', confidence: 0.6 }] },
    { auction: true, amounts: [seen('Current bid €5.00', 500)] },
  ],
  [
    'a bid beside a price to buy at once',
    ['Current bid €5.00', 'Buy now €9.00'],
    {},
    { auction: true, amounts: [amount('buy-now', 900, '€9.00'), seen('Current bid €5.00', 500)] },
  ],
  [
    'a bid beside an estimate',
    ['Current bid €5.00', 'Estimate €8.00'],
    {},
    { auction: true, amounts: [amount('estimate', 800, '€8.00'), seen('Current bid €5.00', 500)] },
  ],
  [
    'a bid beside both',
    ['Current bid €5.00', 'Estimate €8.00', 'Buy now €9.00'],
    {},
    {
      auction: true,
      amounts: [amount('buy-now', 900, '€9.00'), amount('estimate', 800, '€8.00'), seen('Current bid €5.00', 500)],
    },
  ],
  ['a price to buy at once alone', ['Buy now €9.00', 'Estimate €8.00'], {}, { auction: false, amounts: [] }],
  ['a next bid', ['Next bid €6.00'], {}, { auction: true, amounts: [amount('next-bid', 600, '€6.00')] }],
  ['a start', ['Starting bid €1.00'], {}, { auction: true, amounts: [amount('start', 100, '€1.00')] }],
  ['a start beside one’s own bid', ['Your bid €7.00'], {}, { auction: true, amounts: [] }],
  [
    'two bids, the first of them the current one',
    ['Current bid €5.00', 'Winning bid €4.00', 'Next bid €6.00'],
    {},
    { auction: true, amounts: [amount('next-bid', 600, '€6.00'), seen('Current bid €5.00', 500)] },
  ],
  [
    'one amount under two labels, the first of them its name',
    ['Starting price €4.00', 'Estimate €4.00'],
    {},
    { auction: true, amounts: [amount('start', 400, '€4.00')] },
  ],
  [
    'a start of the same amount as the bid',
    ['Current bid €5.00', 'Starting price €5.00'],
    {},
    { auction: true, amounts: [seen('Current bid €5.00', 500)] },
  ],
  [
    'amounts that were known, each by its name, but a former one and one that was pointed at',
    ['Starting price €4.00'],
    {
      price: [
        priced(400, 'json-ld', 0.9),
        priced(400, 'user-pick', 1),
        priced(400, 'visible', 0.3, 'was'),
        priced(400, 'microdata', 0.2),
        priced(40, 'json-ld', 0.8),
      ],
    },
    {
      auction: true,
      amounts: [
        'start 400 json-ld before 0.4 -',
        'sale 400 user-pick before 1 -',
        'was 400 visible before 0.3 -',
        'start 400 microdata before 0.2 -',
        'sale 40 json-ld before 0.8 -',
      ],
    },
  ],
  [
    'a start where only the former price is of its amount',
    ['Starting price €4.00'],
    { price: [priced(400, 'json-ld', 0.9, 'was')] },
    { auction: true, amounts: ['was 400 json-ld before 0.9 -', amount('start', 400, '€4.00')] },
  ],
  [
    'a start beside seen prices, of which only a certain one stays',
    ['Starting price €4.00'],
    {
      price: [
        priced(700, 'visible', 0.6),
        priced(710, 'visible', 0.59),
        priced(720, 'json-ld', 0.5),
        priced(730, 'visible', 0.5, 'shipping'),
      ],
    },
    {
      auction: true,
      amounts: [
        'sale 700 visible before 0.6 -',
        'sale 720 json-ld before 0.5 -',
        'shipping 730 visible before 0.5 -',
        amount('start', 400, '€4.00'),
      ],
    },
  ],
  [
    'a start and a bid beside a seen price',
    ['Starting price €4.00', 'Current bid €5.00'],
    { price: [priced(710, 'visible', 0.5)] },
    {
      auction: true,
      amounts: ['sale 710 visible before 0.5 -', amount('start', 400, '€4.00'), seen('Current bid €5.00', 500)],
    },
  ],
  [
    'a next bid beside a seen price',
    ['Next bid €6.00'],
    { price: [priced(710, 'visible', 0.5)] },
    { auction: true, amounts: ['sale 710 visible before 0.5 -', amount('next-bid', 600, '€6.00')] },
  ],
  [
    'a bid that was seen as a price, less surely and more',
    ['Current bid €5.00', 'Next bid €6.00'],
    { price: [priced(500, 'visible', 0.5), priced(800, 'json-ld', 0.9)] },
    {
      auction: true,
      amounts: [seen('Current bid €5.00', 500), 'sale 800 json-ld before 0.9 -', amount('next-bid', 600, '€6.00')],
    },
  ],
  [
    'a bid that was surer before',
    ['Current bid €5.00', 'Next bid €6.00'],
    { price: [priced(500, 'visible', 0.95)] },
    { auction: true, amounts: ['sale 500 visible before 0.95 -', amount('next-bid', 600, '€6.00')] },
  ],
  [
    'a bid whose characters mean two amounts is as sure as any',
    ['Current bid €1.299', 'Next bid €6.00'],
    {},
    {
      auction: true,
      amounts: [
        amount('next-bid', 600, '€6.00'),
        'sale 129900 visible text: Current bid €1.299 0.93 €1.299 ambiguous current-bid',
      ],
    },
  ],
])('an auction of %s', (_, lines, before, wanted) => {
  expect(read(lines, before)).toEqual(wanted);
});

const bidOf = (...lines: string[]) => read([...lines, 'Next bid €6.00']).amounts.slice(1);

it.each<[string, string[], string[]]>([
  ['behind its amount', ['€12,999.00 winning bid'], ['€12,999.00 winning bid']],
  ['below its label', ['Current bid', '€5.00'], ['Current bid']],
  ['three lines below', ['Current bid', '', '-', '€5.00'], ['Current bid']],
  ['four lines below', ['Current bid', '', '-', '*', '€5.00'], []],
  ['below another label', ['Current bid', 'Time left', '€5.00'], []],
  ['twice as long with what stands beside it', ['Current bid', '€5.00 abcd'], ['Current bid']],
  ['and more beside it', ['Current bid', '€5.00 abcde'], []],
  [
    'on a line of a hundred and twenty',
    [`Current bid €5.00 ${'x'.repeat(102)}`],
    [`Current bid €5.00 ${'x'.repeat(42)}`],
  ],
  ['on a line of one more', [`Current bid €5.00 ${'x'.repeat(103)}`], []],
  ['below a count and a label', ['2 current bid', '€5.00'], []],
  ['below words that label nothing', ['Bag', '€5.00'], []],
])('an amount %s', (_, lines, wanted) => {
  expect(bidOf(...lines).map((one) => one.replace(/^sale \d+ visible text: | 0\.93.*$/g, ''))).toEqual(wanted);
});

it.each<[string, string[], string[]]>([
  ['on its line', ['Ends 12 March 2026'], ['2026-03-12 0.6 Ends 12 March 2026']],
  ['on the line below', ['Ends', '13 March 2026', '14 March 2026'], ['2026-03-13 0.6 Ends 13 March 2026']],
  ['on the line below one that names another', ['Ends: 3', '13 March 2026'], []],
  ['nowhere', ['Next bid €6.00', 'Ends'], []],
  [
    'and where it ended',
    ['Ended 1 March 2026', 'Ends 12 March 2026'],
    ['2026-03-12 0.6 Ends 12 March 2026', '2026-03-01 0.6 Ended 1 March 2026'],
  ],
  [
    'in so many words',
    ['Ends', `on 13 March 2026 ${'x'.repeat(200)}`],
    [`2026-03-13 0.6 Ends on 13 March 2026 ${'x'.repeat(98)}`],
  ],
])('when an auction ends %s', (_, lines, wanted) => {
  expect(read(['Next bid €6.00', ...lines]).ends ?? 'none').toEqual(wanted);
});

it('reads when it ends as the page’s language writes days, and none it does not know', () => {
  expect(read(['Next bid €6.00', 'Ends 03/04/2026'], {}, 'en-GB').ends?.[0]?.slice(0, 10)).toBe('2026-04-03');
  expect(read(['Next bid €6.00', 'Ends 03/04/2026'], {}, 'en-US').ends?.[0]?.slice(0, 10)).toBe('2026-03-04');
  expect(read(['Buy now €9.00', 'Ends 12 March 2026']).ends).toBeUndefined();
});
