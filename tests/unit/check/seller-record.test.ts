import { sellerRecord } from '../../../src/check/seller-record';
import { addDays, monthSpan, partialDateSpan, yearSpan } from '../../../src/span';
import type { Span } from '../../../src/span/types';
import { testRule } from '../../rule-tester';
import { emptyListing, facts, stated, withPhotos } from './sample';

type Seller = ReturnType<typeof facts>['listing']['seller'];
const seller = (rest: Partial<Seller>) =>
  facts({ listing: withPhotos(1, { seller: { ...emptyListing.seller, ...rest } }) });
const joined = (month: number, year: number) => stated(monthSpan(year, month));
const rated = (share: number, count: number | null, words: string) => stated({ share, count, words });
const since = (span: Span) => ({ of: 'since', since: { ...span } });
const basis = ['How long a seller has sold here, how much, and how well rated is all that a page shows of the seller.'];
const asks = ['seller'];
const open = { ...monthSpan(2016, 3), to: null, precision: 'range' as const };

testRule(sellerRecord, {
  speaks: {
    'for a long and good record': [
      seller({ memberSince: joined(3, 2016), rating: rated(0.99, 214, '99% (214)'), salesCount: stated(320) }),
      {
        kind: 'agreement',
        data: {
          told: [
            since(monthSpan(2016, 3)),
            { of: 'rating', words: '99% (214)', count: null },
            { of: 'sales', count: 320 },
          ],
          least: null,
        },
        says: 'The seller is a member since March 2016, rated “99% (214)” and with 320 sales.',
        basis,
      },
    ],
    'of when somebody joined no finer than the page does': [
      seller({ memberSince: stated(yearSpan(2016)) }),
      {
        kind: 'agreement',
        data: { told: [since(yearSpan(2016))], least: null },
        says: 'The seller is a member since 2016.',
        basis,
      },
    ],
    'of the very day, where the page has it': [
      seller({ memberSince: stated(partialDateSpan('2016-03-14') as Span) }),
      {
        kind: 'agreement',
        data: { told: [since(partialDateSpan('2016-03-14') as Span)], least: null },
        says: 'The seller is a member since 14 March 2016.',
        basis,
      },
    ],
    'of the first month of a longer span': [
      seller({ memberSince: stated(open) }),
      {
        kind: 'agreement',
        data: { told: [since(monthSpan(2016, 3))], least: null },
        says: 'The seller is a member since March 2016.',
        basis,
      },
    ],
    'of what is short in a new account with few ratings, doubting nobody for it': [
      seller({ memberSince: joined(12, 2025), rating: rated(1, 1, '1 rating') }),
      {
        kind: 'gap',
        data: { told: [since(monthSpan(2025, 12)), { of: 'rating', words: '1 rating', count: null }], least: null },
        says: 'The seller’s record is short or says little: a member since December 2025 and rated “1 rating”.',
        basis,
        asks,
      },
    ],
    'of few ratings beside many sales': [
      seller({ rating: rated(0.992, 4, '99.2%'), salesCount: stated(320) }),
      {
        kind: 'gap',
        data: { told: [{ of: 'rating', words: '99.2%', count: 4 }], least: null },
        says: 'The seller’s record is short or says little: rated “99.2%” from 4 ratings.',
        basis,
        asks,
      },
    ],
    'against a low rating by enough buyers, with what is low about it': [
      seller({ rating: rated(0.8, 60, '80% positive') }),
      {
        kind: 'doubt',
        data: { told: [{ of: 'rating', words: '80% positive', count: 60 }], least: 0.85 },
        says: 'The seller is rated “80% positive” from 60 ratings, which is less than 85% of the best rating there.',
        basis,
        asks,
      },
    ],
    'of no doubt about a low rating of which nobody says how many gave it': [
      seller({ rating: rated(0.8, null, '4 / 5') }),
      {
        kind: 'gap',
        data: { told: [{ of: 'rating', words: '4 / 5', count: null }], least: null },
        says: 'The seller’s record is short or says little: rated “4 / 5”.',
        basis,
        asks,
      },
    ],
    'well of a high rating of which nobody says how many gave it': [
      seller({ rating: rated(0.95, null, '4.8 / 5') }),
      {
        kind: 'agreement',
        data: { told: [{ of: 'rating', words: '4.8 / 5', count: null }], least: null },
        says: 'The seller is rated “4.8 / 5”.',
        basis,
      },
    ],
    'of a number of ratings that the page writes with a mark for thousands': [
      seller({ rating: rated(0.99, 1214, '99% (1,214)') }),
      {
        kind: 'agreement',
        data: { told: [{ of: 'rating', words: '99% (1,214)', count: null }], least: null },
        says: 'The seller is rated “99% (1,214)”.',
        basis,
      },
    ],
    'of a record that the page does not show': [
      facts(),
      {
        kind: 'gap',
        data: { told: [], least: null },
        says: 'The page shows no record of the seller: no ratings, no sales, no date of joining.',
        basis,
        asks,
      },
    ],
  },
  silent: {},
  limits: {
    fewRatings: {
      is: 10,
      step: 1,
      given: (count) => seller({ rating: rated(0.9, count, '90%'), salesCount: stated(count) }),
      under: 'gap',
      at: 'agreement',
      over: 'agreement',
    },
    weakShare: {
      is: 0.85,
      step: 0.001,
      given: (share) => seller({ rating: rated(share, 10, 'rated') }),
      under: 'doubt',
      at: 'agreement',
      over: 'agreement',
    },
    newAccountDays: {
      is: 90,
      step: 1,
      given: (days) => seller({ memberSince: stated(partialDateSpan(addDays('2026-01-15', -days)) as Span) }),
      under: 'gap',
      at: 'agreement',
      over: 'agreement',
    },
  },
});
