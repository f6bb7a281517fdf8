import type { Listing } from '../listing/types';
import { type Observation, type PhotoRead, valueIn } from '../photo';
import { type Adjustment, noAdjustment } from '../photo/adjustment-types';
import {
  type Correction,
  codeByHand,
  mostCorrections,
  type NewCorrection,
  type PhotoMeant,
  pieceOfStamp,
} from './correction-types';

/** The list with one more. What was set of the same thing before is replaced; what is there already stays one. */
export function correct(list: readonly Correction[], made: NewCorrection): Correction[] {
  if (list.some((one) => sameBut(one, made))) return [...list];
  const others = list.filter((one) => !isOfSame(one, made));
  if (isNothing(made) || others.length >= mostCorrections) return others;
  return [...others, { ...made, id: nextId(list) } as Correction];
}

/** The list without one. */
export const undo = (list: readonly Correction[], id: string): Correction[] => list.filter((one) => one.id !== id);

/** A code that the buyer typed; without a photo it is the piece's. */
export const typedCode = (code: string, photo: PhotoMeant | null = null): NewCorrection => ({
  of: 'seen',
  photo,
  target: null,
  to: { what: codeByHand, value: code, unit: null, where: null },
});

/** The codes that a hand wrote down, with the corrections that did. */
export const codesByHand = (list: readonly Correction[]): { id: string; code: string }[] =>
  list.flatMap((one) =>
    one.of === 'seen' && one.to?.what === codeByHand && typeof one.to.value === 'string'
      ? [{ id: one.id, code: one.to.value }]
      : [],
  );

/** One of the listing's photos as a correction means it. */
export function photoMeant(listing: Listing, photoId: string, read?: PhotoRead): PhotoMeant | null {
  const link = listing.photos.find(({ id }) => id === photoId);
  return link ? { url: link.url, hash: read ? tellingHash(read) : null } : null;
}

/** The listing's photo that a correction means; null where it shows no such photo, as far as is known. */
export function findMeant(
  { url, hash }: PhotoMeant,
  links: Listing['photos'],
  photos: readonly PhotoRead[],
): string | null {
  const link = links.find((one) => one.url === url);
  if (link) return link.id;
  const listed = new Set(links.map(({ id }) => id));
  const same = photos.find((photo) => listed.has(photo.photoId) && hash !== null && tellingHash(photo) === hash);
  return same?.photoId ?? null;
}

/** How a photo is to be read, as the buyer last said. */
export function adjustmentOf(
  list: readonly Correction[],
  photoId: string,
  links: Listing['photos'],
  photos: readonly PhotoRead[],
): Adjustment {
  const part = list.findLast((one) => one.of === 'part' && findMeant(one.photo, links, photos) === photoId);
  return part?.of === 'part' ? part.to : noAdjustment;
}

/** The name of an observation within its photo. */
export const nameWithin = (photoId: string, { id }: Pick<Observation, 'id'>): string =>
  id.startsWith(photoId) ? id.slice(photoId.length) : id;

/** A blank picture tells no photo from another. */
function tellingHash(read: PhotoRead): string | null {
  const hash = valueIn(read, 'hash');
  return typeof hash === 'string' && !/^(0+|f+)$/.test(hash) ? hash : null;
}

const isNothing = (made: NewCorrection): boolean => made.of === 'part' && same(made.to, noAdjustment);

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

function sameBut({ id: _, ...one }: Correction, made: NewCorrection): boolean {
  return same(one, made);
}

/** Whether both say something of the same thing, so that the later one counts. What is added stands beside. */
function isOfSame(one: Correction, made: NewCorrection): boolean {
  if (one.of === 'part') return made.of === 'part' && one.photo.url === made.photo.url;
  if (one.of === 'mark')
    return made.of === 'mark' && one.photo.url === made.photo.url && one.mark.number === made.mark.number;
  if (one.of === 'finding') return made.of === 'finding' && made.target.id === one.target.id;
  if (one.of === 'piece') return made.of === 'piece';
  if (one.of === 'seen' && one.to?.what === pieceOfStamp)
    return made.of === 'seen' && made.to?.what === pieceOfStamp && made.photo?.url === one.photo?.url;
  if (one.target === null || one.of !== made.of) return false;
  if (one.of === 'claim') return made.of === 'claim' && made.target?.id === one.target.id;
  return made.of === 'seen' && made.photo?.url === one.photo?.url && made.target?.name === one.target.name;
}

/** One above all before, so that an undone one's name is not given to another while others stand. */
function nextId(list: readonly Correction[]): string {
  const numbers = list.map(({ id }) => Number(/^hand-(\d+)$/.exec(id)?.[1] ?? 0));
  return `hand-${Math.max(0, ...numbers) + 1}`;
}
