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
/**
 * The folder of a public benchmark of articles with `ground-truth.json` and `html`,
 * https://github.com/scrapinghub/article-extraction-benchmark (MIT licence): how many are taken as an offer.
 */
const articles = process.env.ARTICLE_PAGES;
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

const nothing: Counts = {
  pages: 0,
  offers: 0,
  right: 0,
  given: 0,
  labelled: 0,
  availabilityRight: 0,
  availabilityGiven: 0,
};

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

const now = '2021-02-03T12:00:00Z';

async function readPacked(path: string, url: string): Promise<Listing> {
  const { document } = parseHTML(gunzipSync(readFileSync(path)).toString('utf8'));
  return readListing(document as unknown as Document, { url, now });
}

const truthsIn = <T>(at: string): [string, T][] =>
  Object.entries(JSON.parse(readFileSync(join(at, 'ground-truth.json'), 'utf8')) as Record<string, T>);

async function printArticles(at: string): Promise<void> {
  const pages = truthsIn<{ url?: string }>(at);
  let offers = 0;
  for (const [id, { url }] of pages)
    if (
      (await readPacked(join(at, 'html', `${id}.html.gz`), url ?? 'https://attic-arcade.example/')).kind === 'listing'
    )
      offers++;
  console.log(`articles: ${offers} of ${pages.length} taken as an offer.`);
}

const percent = (a: number, b: number): string => (b === 0 ? '–' : `${((a / b) * 100).toFixed(1)} %`);

function printCounts(what: string, counts: Counts): void {
  const { pages, offers, right, given, labelled, availabilityRight, availabilityGiven } = counts;
  console.log(
    `${what}: ${pages} pages, taken as an offer ${percent(offers, pages)}; ` +
      `price F1 ${((2 * right) / (given + labelled)).toFixed(3)} (precision ${percent(right, given)}, recall ${percent(right, labelled)}; ` +
      `${right} right of ${given} given and ${labelled} labelled); availability ${percent(availabilityRight, availabilityGiven)} right of ${availabilityGiven} said.`,
  );
}

/** Labelled product pages of others: price by the benchmark's own measure, pages taken as an offer, availability. */
export async function bench(): Promise<void> {
  if (articles !== undefined) await printArticles(articles);
  if (folder === undefined || !existsSync(join(folder, 'ground-truth.json'))) {
    console.log('skipped: not present (PRODUCT_PAGES names the folder `dataset` of the benchmark)');
    return;
  }
  const truths = truthsIn<Labelled>(folder);
  const whole: Counts = { ...nothing };
  for (const aside of [false, true].filter((is) => part === 'both' || part === (is ? 'aside' : 'seen'))) {
    const counts: Counts = { ...nothing };
    for (const [id, truth] of truths.filter(([, one]) => isAside(one) === aside)) {
      const listing = await readPacked(join(folder, 'html', `${id}.html.gz`), truth.url);
      const faults = count(counts, listing, truth);
      if (lists && faults.length > 0) console.log(`  ${id.slice(0, 12)} ${truth.url}\n      ${faults.join('; ')}`);
    }
    for (const name of Object.keys(whole) as (keyof Counts)[]) whole[name] += counts[name];
    printCounts(aside ? 'set aside' : 'seen while tuning', counts);
  }
  if (part === 'both') printCounts('all', whole);
}
