import { type PhotoRead, printedIn, quadSize, showsPart, stampAsPart, valueIn } from '../photo';
import { findMeant, photoMeant } from './correction';
import type { NewCorrection } from './correction-types';
import type { Case } from './types';

/** One part that the buyer says a photo shows; `id` is the correction that says so. */
export interface PartTag {
  id: string;
  part: string;
}

/** What the buyer says a photo shows, in the order in which it was said. */
export const tagsOf = ({ corrections, listing, photos }: Tagged, photoId: string): PartTag[] =>
  corrections.flatMap((one) =>
    one.of === 'seen' &&
    one.to?.what === showsPart &&
    one.photo !== null &&
    findMeant(one.photo, listing.photos, photos) === photoId
      ? [{ id: one.id, part: String(one.to.value) }]
      : [],
  );
type Tagged = Pick<Case, 'corrections' | 'listing' | 'photos'>;

/** The buyer says that a photo shows a part; null for a photo that the case does not have. */
export function tagPart({ listing, photos }: Tagged, photoId: string, part: string): NewCorrection | null {
  const read = photos.find((one) => one.photoId === photoId);
  const photo = photoMeant(listing, photoId, read);
  return photo && { of: 'seen', photo, target: null, to: { what: showsPart, value: part, unit: null, where: null } };
}

/** What a buyer looks at on any bag, by its key, which stays the same from case to case. Common practice, no source. */
const looked: readonly (readonly [key: string, part: string])[] = [
  ['1', 'body'],
  ['2', 'pattern'],
  ['3', 'base'],
  ['4', 'edge'],
  ['5', 'handle'],
  ['6', 'hardware'],
  ['7', 'lining'],
  ['8', 'stitching'],
  ['9', 'tab'],
  ['0', stampAsPart],
];
const letters = 'abcdefghijklmnopqrstuvwxyz';

/** The parts that are offered, each with its key; what else is asked for of this piece has letters. */
export function partsToTag({ outcomes }: Pick<Case, 'outcomes'>): { key: string; part: string }[] {
  const asked = outcomes.flatMap((outcome) =>
    outcome.outcome === 'speaks' && outcome.check === 'parts-shown'
      ? outcome.findings.flatMap(({ data: { of, parts } }) => of ?? parts ?? [])
      : [],
  );
  const others = asked.map(String).filter((part) => !looked.some(([, known]) => known === part));
  return [
    ...looked.map(([key, part]) => ({ key, part })),
    ...others.slice(0, letters.length).map((part, at) => ({ key: letters.charAt(at), part })),
  ];
}

/** What can be told of a photo without knowing bags: it proposes, and tags nothing. */
export type Proposal = 'stamp' | 'close-up' | 'print' | 'even-ground';

/** Letters that stand so high in a photo's longer side were photographed from near. Own choice. */
const closeShare = 0.04;
/** As even as a wall or a sheet photographed in one light, in steps of 255. Own choice. */
const evenSpread = 40;

export function proposalsOf(kase: Pick<Case, 'decodings'>, read: PhotoRead | undefined): Proposal[] {
  if (read?.state !== 'read') return [];
  const stamped = kase.decodings.some(({ from }) => from.kind === 'photo' && from.photoId === read.photoId);
  const lines = read.observations.filter(({ what }) => what === 'stamp-line' || what === 'print');
  const longer = Math.max(read.width, read.height);
  const near = lines.some(({ where }) => where?.form === 'quad' && quadSize(where.points).down >= closeShare * longer);
  const spread = valueIn(read, 'ground-spread');
  return [
    ...(stamped ? (['stamp'] as const) : []),
    ...(near ? (['close-up'] as const) : []),
    ...(printedIn(read).length > 0 ? (['print'] as const) : []),
    ...(typeof spread === 'number' && spread <= evenSpread ? (['even-ground'] as const) : []),
  ];
}
