import { parseHTML } from 'linkedom';
import type { PageOptions, readFacts, readPage } from '../../src/listing';
import type { PageExtract } from '../../src/listing/extract-types';
import type { lookBySource } from '../../src/listing/page/look-by-source';
import type { Candidate, Listing, Measure, Price } from '../../src/listing/types';
import { prose } from './techniques/prices';

/** A page of one technique: its HTML, or that and what else is known when it is read. */
export type TechniquePage = string | ({ html: string } & Settings);
interface Settings extends Partial<Omit<PageOptions, 'view' | 'look' | 'clock' | 'pause'>> {
  /** Computed style by selector, where the page is laid out; what is not named is inline and seen. */
  styles?: Record<string, Record<string, string>>;
  /** Properties that only a browser sets, such as `naturalWidth`, by selector. */
  properties?: Record<string, Record<string, unknown>>;
}

/** The two halves of the reader and the look of a page without a browser. */
export interface Reader {
  readPage: typeof readPage;
  readFacts: typeof readFacts;
  lookBySource: typeof lookBySource;
}

const parsed = new Map<string, Document>();
function documentOf(html: string): Document {
  const known = parsed.get(html);
  if (known) return known;
  const whole = /<html\b/i.test(html) ? html : `<!doctype html><html><head></head><body>${html}</body></html>`;
  const document = parseHTML(whole).document as unknown as Document;
  parsed.set(html, document);
  return document;
}

/** Everything that is read of a page: what its structure tells, and the listing that becomes of it. */
export async function readWhole(page: TechniquePage, { readPage, readFacts, lookBySource }: Reader): Promise<Reading> {
  const { html, styles, properties = {}, ...given } = typeof page === 'string' ? { html: page } : page;
  const document = documentOf(html);
  for (const [selector, values] of Object.entries(properties))
    for (const element of document.querySelectorAll(selector))
      for (const [name, value] of Object.entries(values))
        Object.defineProperty(element, name, { value, configurable: true });
  // A clock that counts how often it is looked at: how the work is divided is told like everything else.
  let [looks, pauses] = [0, 0];
  const turns = {
    clock: () => ++looks,
    pause: async () => {
      pauses += 1;
    },
  };
  const options: PageOptions = {
    url: 'https://attic-arcade.example/item/1042',
    now: '2026-03-01T12:00:00Z',
    ...turns,
    ...given,
  };
  const view = styles && {
    getComputedStyle: (element: Element) => ({
      getPropertyValue: (name: string) =>
        Object.entries(styles).reduce(
          (value, [selector, declared]) => (element.matches(selector) ? (declared[name] ?? value) : value),
          initial[name] ?? '',
        ),
    }),
  };
  const look = view ? { view: view as unknown as NonNullable<PageOptions['view']> } : { look: lookBySource(document) };
  const extract = await readPage(document, { ...look, ...options });
  return shortened({
    ...toldOf(extract, readFacts(extract)),
    clock: `${looks} looks, ${pauses} pauses`,
  });
}

const initial: Record<string, string> = { display: 'block', visibility: 'visible', opacity: '1', position: 'static' };

/** Long runs of one character as their number, the small pages' sentence as ¶, their site as ~, html > body > main as ⌂: it stays readable. */
const shortened = (reading: Reading): Reading =>
  JSON.parse(
    JSON.stringify(reading)
      .replace(/([^\\])\1{19,}/g, (run, character: string) => `${character}×${run.length}`)
      .replaceAll(prose, '¶')
      .replaceAll('https://attic-arcade.example', '~')
      .replaceAll('html > body > main', '⌂')
      .replaceAll('json-ld @ json-ld', 'json-ld @'),
  );

/** A reading as a person compares it: one line a value, what is empty left out. */
export type Reading = Record<string, unknown>;

/** A value with its confidence, where it comes from, the characters it was read from, and its caveats. */
const candidateWords = ({ value, origin, where, confidence, words, caveats }: Candidate<unknown>): string =>
  [
    `${confidence} ${valueWords(value)} ${origin} @ ${where}`,
    ...(words === undefined ? [] : [`from ${JSON.stringify(words)}`]),
    ...(caveats ? [`(${caveats.join(', ')})`] : []),
  ].join(' ');

function valueWords(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if ('mm' in value) {
    const { dimension, mm, precisionMm, unit, words, ...rest } = value as Measure;
    return [dimension, mm, `±${precisionMm}`, unit, words, ...Object.values(rest)].join(' ');
  }
  if (!('minor' in value)) return JSON.stringify(value);
  const { kind, minor, exponent, currency, currencies, ...more } = value as Price;
  const others =
    currencies.length === 1 && currencies[0] === currency
      ? ''
      : ` of ${currencies.length}: ${currencies.slice(0, 4).join(' ')}`;
  return `${kind} ${minor}/${exponent} ${currency}${others}${Object.keys(more).length > 0 ? ` ${JSON.stringify(more)}` : ''}`;
}

const isCandidates = (value: unknown): value is Candidate<unknown>[] =>
  Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === 'object' && 'confidence' in one);

function withoutEmpty(values: Record<string, unknown>): Reading {
  const kept = Object.entries(values)
    .map(([name, value]) => [name, isCandidates(value) ? value.map(candidateWords) : value] as const)
    .filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0));
  return Object.fromEntries(kept);
}

const photoWords = ({ id, url, alternatives, width, height, alt, origins }: Listing['photos'][number]): string =>
  `${id} ${url} ${width}×${height} ${JSON.stringify(alt)} ${origins.join('+')}${alternatives.map((one) => ` | ${one}`).join('')}`;

/** What most of the small pages say is left out where it is all that is said. */
const usualTitle = '0.82 "Ondrasse Palma Tote" visible @ html > body > main > h1';
const usual = '1 https://attic-arcade.example/item/1042 2026-03-01T12:00:00Z listing';

function toldOf({ listing: seen, ...extract }: PageExtract, listing: Listing): Reading {
  const { signs, labelled, cut, state, notes, picked } = extract;
  const { seller, photos, page, problems, format, url, readAt, kind, ...fields } = listing;
  const titles = fields.title.map(candidateWords);
  const told = `${format} ${url} ${readAt} ${kind}`;
  return withoutEmpty({
    ...withoutEmpty({ ...fields, ...seller }),
    listing: told === usual ? undefined : told,
    language: fields.language === 'en' ? undefined : fields.language,
    title: String(titles) === usualTitle ? undefined : titles.length > 0 ? titles : 'none',
    page: page && `${page.kind}: ${page.evidence.join(', ')}`,
    photos: (listing.kind === 'listing' ? photos : seen.photos).map(photoWords),
    problems: problems.map(({ code, where, data }) => `${code} @ ${where}${data ? `: ${JSON.stringify(data)}` : ''}`),
    signs: Object.entries(signs)
      .filter(([, value]) => value !== false && value !== 0 && value !== null && String(value) !== '')
      .map(([name, value]) => `${name}: ${Array.isArray(value) ? value.join(' | ') : value}`),
    labelled: labelled.map(({ name, value, ...from }) => candidateWords({ value: `${name}: ${value}`, ...from })),
    notes: notes.map(({ code, where, count, field }) => `${code} @ ${where} ${count}${field ? ` ${field}` : ''}`),
    picked: picked.map(({ field, words, where }) => `${field} @ ${where}: ${words}`),
    things: state.things.map((thing) => JSON.stringify(thing)),
    texts: state.texts,
    cut: JSON.stringify(cut) === '{"nodesRead":null,"attributes":0,"characters":0}' ? undefined : cut,
  });
}
