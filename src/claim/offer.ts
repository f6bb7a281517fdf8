import type { Listing } from '../listing/types';
import {
  foldWords,
  phrasePattern,
  phraseTest,
  rightBehind,
  tableWords,
  textPattern,
  wordsOf,
  wordsWithout,
} from '../text';
import type { Offer } from './offer-types';
import { findParts } from './parts';
import { type ClaimDraft, passagesOf, titleOf } from './passage';
import type { Claim, Part } from './types';

/*
 * What is offered, where that is not a whole bag: a part ("strap only"), a small thing of its own ("belt"), packaging
 * without its piece, something made of another's material. What holds of a bag (its size, its price, its parts) does
 * not hold of these. Common practice, no source.
 */

/** May be what a bag itself is called, or a part of it. */
const notSmall = new Set(['purse', 'cartera', 'watch', 'strap', 'riem', 'pouch', 'pouches', 'dust bag', 'dustbag']);
const smallThings = phraseTest(wordsOf('small-thing').filter((word) => !notSmall.has(word)));
const bags = phraseTest(wordsWithout([...wordsOf('bag'), ...tableWords('part').body], 'small-thing'));
const nothingElse = phraseTest(wordsOf('nothing-else'));
const meantFor = textPattern(
  `^(?:\\s\\p{L}{1,12})?\\s?(?:${phrasePattern(wordsOf('nothing-else', 'meant-for')).source})`,
);
const severable = new Set<Part>(['strap', 'handle', 'zip', 'lock', 'hardware', 'lining']);

type Titled = Pick<Listing, 'title' | 'description' | 'text' | 'language'>;

/** What a listing offers, by its title and by what its seller says of the whole offer. */
export function offerOf(listing: Titled, claims: readonly Pick<Claim, 'kind'>[]): Offer {
  const says = (kind: Claim['kind']) =>
    claims.some((claim) => claim.kind === kind && (!('polarity' in claim) || claim.polarity === 'is'));
  if (says('packaging-only')) return { kind: 'packaging', part: null };
  if (says('remade')) return { kind: 'remade', part: null };
  const title = foldWords(titleOf(passagesOf(listing))?.text ?? '');
  const part = partOffered(title);
  if (part) return { kind: 'part', part };
  return { kind: smallThings.test(title.text) && !bags.test(title.text) ? 'accessory' : 'piece', part: null };
}

/** "Shoulder strap only", "strap for a Messenger", "nur Riemen": the part that the title opens with, and no bag ahead of it. */
function partOffered(title: ReturnType<typeof foldWords>): Offer['part'] {
  const { text } = title;
  for (const { value, foldedStart, foldedEnd } of findParts(title)) {
    if (!severable.has(value)) continue;
    const ahead = text.slice(0, foldedStart);
    const only = nothingElse.test(ahead.slice(-12)) || meantFor.test(rightBehind(text, foldedEnd));
    if (only && !bags.test(ahead) && !/\d/.test(ahead)) return value as Exclude<Offer['part'], null>;
  }
  return null;
}

/** Said of the bag that a part was taken off, that packaging was of, or that something was made from. */
const ofTheFormerBag = new Set<Claim['kind']>(['made', 'model', 'code', 'condition', 'replaced', 'stored', 'age-word']);

const isNew = new Set<string>(['new', 'unused', 'as-new']);

/** Whether a claim is of what is offered, and not of the bag that it was once part of. */
export function isOfOffer(claim: ClaimDraft, { kind }: Offer): boolean {
  // A condition of the form, and a new thing, is what is offered; worn was the bag that it was made from.
  const ofForm = claim.kind === 'condition' && (claim.at.field === 'data' || isNew.has(claim.condition));
  if (kind === 'remade') return ofForm || (!ofTheFormerBag.has(claim.kind) && claim.kind !== 'material');
  if (kind === 'packaging') return ofForm || (!ofTheFormerBag.has(claim.kind) && claim.kind !== 'bought');
  return kind !== 'part' || (claim.kind !== 'made' && claim.kind !== 'model');
}
