// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { buildCase, lookAt } from '../../../src/case';
import type { Listing, Price } from '../../../src/listing/types';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { listingOf } from '../case/sample-listing';
import { stated } from '../check/sample';

const now = '2026-01-15T10:00:00Z';
const room = document.createElement('div');
afterEach(() => render(null, room));

const price = (minor: number): Price => ({ kind: 'sale', minor, exponent: 2, currency: 'EUR', currencies: ['EUR'] });
const listing = (rest: Partial<Listing> = {}, description = 'Made in 1995. Size 30 x 21 x 17 cm. Length 30 cm.') =>
  listingOf('Ondrasse Carryall 30', description, 3, { price: stated(price(54_000)), ...rest });

async function show(after: Listing, before?: Listing): Promise<Element> {
  const input = { photos: [], corrections: [], makers: [], now };
  const previous = before && lookAt(buildCase({ ...input, listing: { ...before, readAt: '2026-01-02T10:00:00Z' } }));
  const kase = buildCase({ ...input, listing: after, ...(previous ? { previous } : {}) });
  await act(() => render(<CaseView kase={kase} pictureOfLine={() => null} />, room));
  return room.querySelector('.case') as Element;
}

test('a saved listing that is seen again says first what has changed', async () => {
  const after = listing(
    { price: stated(price(50_000)), title: stated('Ondrasse Carryall') },
    'Made in 1996. Size 30 x 21 x 17 cm. Length 30 cm.',
  );
  const first = (await show({ ...after, photos: after.photos.slice(1) }, listing())).querySelector(
    '.case-answer',
  )?.firstElementChild;
  expect(first?.querySelector('h2')?.textContent).toBe('What has changed since the saved look of 2 January 2026');
  expect(
    [...(first?.querySelectorAll('li') ?? [])].map(({ textContent }) => textContent?.replace(/\s+/g, ' ')),
  ).toEqual([
    'The price was 540.00 EUR; now it is 500.00 EUR, 7% less.',
    'The title was “Ondrasse Carryall 30”; now it is “Ondrasse Carryall”.',
    '1 of 3 photos is gone.',
    'The description was changed.No longer there: Made in 1995. New: Made in 1996. ',
    'Made: was 1995; now 1996.',
  ]);
});

test('one in which nothing has changed says so, and one that is seen first says nothing of it', async () => {
  const same = await show(listing(), listing());
  expect(same.querySelector('.case-answer')?.firstElementChild?.textContent).toBe(
    'Nothing has changed since the saved look of 2 January 2026.',
  );
  expect((await show(listing())).querySelector('.changes, .changes-none')).toBeNull();
});

test('every size says which side it is, or that the listing does not', async () => {
  const claims = (await show(listing())).querySelector('.claims');
  const sizes = [...(claims?.querySelectorAll('tr') ?? [])].find(
    (row) => row.querySelector('th')?.textContent === 'Size',
  );
  expect([...(sizes?.querySelectorAll('td > div') ?? [])].map((one) => one.firstChild?.textContent)).toEqual([
    '30 × 21 × 17 cm; the sides are not named, usually they are width × height × depth',
    'width 30 cm',
  ]);
});
