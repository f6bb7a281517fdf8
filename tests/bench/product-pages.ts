import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { parseHTML } from 'linkedom';
import { type Listing, readListing } from '../../src/listing';

/**
 * The folder `dataset` of a public benchmark of labelled product pages, https://github.com/scrapinghub/product-extraction-benchmark
 * (MIT licence), as it stands in its repository. Nothing of it is kept here.
 */
const folder = process.env.PRODUCT_PAGES;
/** `seen`, `aside` or `both`: the shops that may be looked at while tuning, or those set aside by the hash of their name. */
const part = process.env.PRODUCT_PART ?? 'both';
/** Lists each page whose price or availability is not the one labelled. */
const lists = process.env.PRODUCT_LIST === '1';

interface Labelled {
  url: string;
  price?: string[];
  availability: string[];
}

/** Of a shop's host the longest name: pages of one shop in several countries stay in one part. */
const shopOf = (url: string): string =>
  new URL(url).hostname
    .split('.')
    .slice(0, -1)
    .sort((a, b) => b.length - a.length)[0] ?? '';

const isAside = ({ url }: Labelled): boolean => (createHash('sha256').update(shopOf(url)).digest()[0] ?? 0) % 2 === 1;

const amounts: ReadonlySet<string> = new Set(['sale', 'from', 'range', 'start', 'buy-now']);

/**
 * A price as the benchmark labels it: one amount, that of a range its lower end, that of an auction without a bid its
 * start; none where the best that is read is none of these (a former price, postage, an instalment).
 */
function priceOf({ price: [best] }: Listing): number | null {
  return best && amounts.has(best.value.kind) ? best.value.minor / 10 ** best.value.exponent : null;
}

interface Counts {
  pages: number;
  offers: number;
  right: number;
  given: number;
  labelled: number;
  availabilityRight: number;
  availabilityGiven: number;
}

function count(counts: Counts, listing: Listing, truth: Labelled): string[] {
  const faults: string[] = [];
  counts.pages++;
  if (listing.kind === 'listing') counts.offers++;
  else faults.push(`taken for ${listing.kind}`);
  const price = priceOf(listing);
  const prices = (truth.price ?? []).map(Number);
  if (prices.length > 0) counts.labelled++;
  if (price !== null) counts.given++;
  if (price !== null && prices.includes(price)) counts.right++;
  else if (price !== null || prices.length > 0)
    faults.push(`price ${price ?? 'none'}, labelled ${prices.join(' or ') || 'none'}`);
  const [said] = listing.availability;
  if (said) {
    counts.availabilityGiven++;
    const inStock = said.value === 'offered' || said.value === 'reserved';
    if (truth.availability.includes(inStock ? 'InStock' : 'OutOfStock')) counts.availabilityRight++;
    else faults.push(`availability ${said.value}, labelled ${truth.availability.join(' or ')}`);
  }
  return faults;
}

const percent = (a: number, b: number): string => (b === 0 ? '–' : `${((a / b) * 100).toFixed(1)} %`);

/** Labelled product pages of others: price by the benchmark's own measure, pages taken as an offer, availability. */
export async function bench(): Promise<void> {
  const table = folder === undefined ? '' : join(folder, 'ground-truth.json');
  if (folder === undefined || !existsSync(table)) {
    console.log('skipped: not present (PRODUCT_PAGES names the folder `dataset` of the benchmark)');
    return;
  }
  const truths = Object.entries(JSON.parse(readFileSync(table, 'utf8')) as Record<string, Labelled>);
  for (const aside of [false, true].filter((is) => part === 'both' || part === (is ? 'aside' : 'seen'))) {
    const counts: Counts = {
      pages: 0,
      offers: 0,
      right: 0,
      given: 0,
      labelled: 0,
      availabilityRight: 0,
      availabilityGiven: 0,
    };
    for (const [id, truth] of truths.filter(([, one]) => isAside(one) === aside)) {
      const html = gunzipSync(readFileSync(join(folder, 'html', `${id}.html.gz`))).toString('utf8');
      const { document } = parseHTML(html);
      const listing = await readListing(document as unknown as Document, {
        url: truth.url,
        now: '2021-02-03T12:00:00Z',
      });
      const faults = count(counts, listing, truth);
      if (lists && faults.length > 0) console.log(`  ${id.slice(0, 12)} ${truth.url}\n      ${faults.join('; ')}`);
    }
    const { pages, offers, right, given, labelled, availabilityRight, availabilityGiven } = counts;
    console.log(
      `${aside ? 'set aside' : 'seen while tuning'}: ${pages} pages, taken as an offer ${percent(offers, pages)}; ` +
        `price F1 ${((2 * right) / (given + labelled)).toFixed(3)} (precision ${percent(right, given)}, recall ${percent(right, labelled)}; ` +
        `${right} right of ${given} given and ${labelled} labelled); availability ${percent(availabilityRight, availabilityGiven)} right of ${availabilityGiven} said.`,
    );
  }
}
