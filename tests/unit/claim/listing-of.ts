import { type Claim, findClaims } from '../../../src/claim';
import type { Listing } from '../../../src/listing/types';
import type { MakerFile } from '../../../src/maker/types';
import { blankListing } from '../blank-listing';
import { blankMaker } from '../blank-maker';

/** A small maker file for claim tests: an invented maker with one plant, some construction words and two models. */
export const ondrasse: MakerFile = {
  ...blankMaker,
  maker: 'Ondrasse',
  aliases: ['ondrasse bruxelles', 'オンドラス'],
  sources: ['invented for the tests'],
  invented: true,
  plants: [{ code: 'KV', place: 'BE', used: ['1988', '2003'] }],
  codeSystems: [],
  construction: [
    {
      part: 'lining',
      is: 'olive twill',
      also: ['khaki twill'],
      used: ['1970', null],
      strength: 'soft',
      sources: ['test'],
    },
    { part: 'lining', is: 'alcove weave', used: ['1970', null], strength: 'soft', sources: ['test'] },
  ],
  models: [{ name: 'Carryall 30', aliases: ['carry-all 30'] }, { name: 'Boulevard 25' }],
  trade: {},
};

/** A listing with a title and a description and nothing else. */
export const listingOf = (
  title: string,
  description: string,
  language: string | null = 'en',
  more: Partial<Listing> = {},
): Listing => ({
  ...blankListing,
  readAt: '2026-11-25T09:00:00Z',
  language,
  title: title ? [{ value: title, origin: 'visible', where: 'h1', confidence: 0.9 }] : [],
  description: description ? [{ value: description, origin: 'visible', where: 'p', confidence: 0.9 }] : [],
  ...more,
});

const year = (day: string | null) => day?.slice(0, 4) ?? '';

const denial = (claim: Claim) => ('polarity' in claim && claim.polarity === 'is-not' ? 'not ' : '');

/** A claim in short: "made 1990-1999", "lining = red suede", "condition unused". */
export function shortClaim(claim: Claim): string {
  switch (claim.kind) {
    case 'made':
    case 'bought':
      return `${claim.kind} ${year(claim.span.from)}-${year(claim.span.to)}`;
    case 'condition':
      return `condition ${claim.condition}`;
    case 'material':
      return `${claim.part} = ${claim.material}`;
    case 'replaced':
      return `${claim.how === 're-dyed' ? claim.how : 'replaced'} ${claim.parts.join('+') || 'somewhere'}`;
    case 'measure':
      return `${claim.measure.dimension} ${claim.measure.mm}`;
    case 'maker':
      return `maker ${claim.maker}`;
    case 'model':
      return `model${claim.confidence < 0.5 ? '?' : ''} ${claim.model}`;
    case 'origin':
      return `origin ${claim.place}`;
    case 'code':
      return `code ${claim.code}`;
    case 'price':
      return `price ${claim.price.kind} ${claim.price.minor}`;
    case 'sale-channel':
      return `channel ${claim.channel}`;
    case 'returns':
      return `returns ${claim.accepted ? 'yes' : 'no'}`;
    case 'leather':
      return `${denial(claim)}${claim.real ? 'leather' : 'leather-like'}${claim.of ? ` of ${claim.of}` : ''}`;
    case 'metal':
      return `${denial(claim)}${claim.solid ? 'solid ' : ''}${claim.metal} of ${claim.of ?? 'anything'}`;
    case 'age-word':
      return `${denial(claim)}${claim.word}`;
    default:
      return `${denial(claim)}${claim.kind}`;
  }
}

/** All claims of a description in short, in the order of the text. */
export const claimsOf = (description: string, language: string | null, title = ''): string[] =>
  findClaims(listingOf(title, description, language), [ondrasse])
    // What is said of nothing known has a test of its own.
    .filter(({ kind }) => kind !== 'not-placed')
    .sort((a, b) => a.at.field.localeCompare(b.at.field) || a.at.start - b.at.start || a.kind.localeCompare(b.kind))
    .map(shortClaim);

/** A text, and what it claims, under a title. */
export type Told = [text: string, claims: string[], title?: string];
/** The claims of a text of some kinds, by the beginnings of their short forms. */
export const told = (kinds: readonly string[], text: string, title = '', language: string | null = null): string[] =>
  claimsOf(text, language, title).filter((claim) => kinds.some((kind) => claim.startsWith(kind)));

/** Those that begin so: the claims of one kind, or one of them with its value. */
export const claimsBeginning = (short: string, description: string, language: string | null = null): string[] =>
  claimsOf(description, language).filter((claim) => claim.startsWith(short));
