import type * as z from 'zod';
import { liftPhotoRead, liftTypedCodes } from '../../case';
import { storeLook } from '../look';
import type { Packing } from '../ports';
import { case2, type look2 } from '../record/case-2';
import { found1 } from '../record/forms-1';
import { look1 } from '../record/look-1';
import type { note3 } from '../record/note-3';
import type { Found, LookName, Parts } from '../types';
import type { Migration } from '.';
import { liftFinding } from './older-finding';

type Case2 = z.infer<typeof look2.case>;
type Shown = z.infer<typeof note3>['shown'];
interface Look2 {
  case: Case2;
  pictures: z.infer<typeof look2.pictures>;
}

/**
 * With version 3 the looks left the record: what a page and its photos showed lies under its own name, pictures as bytes
 * under theirs, and what was concluded from it is worked out when it is shown. What was found stays, to compare with.
 */
export const looksApart: Migration = {
  to: 3,
  async migrate(raw, packing, parts) {
    const { case: kase, pictures, earlier, ...record } = case2.parse(raw);
    const looks: NamedLook[] = [];
    for (const look of [{ case: kase, pictures }, ...earlier]) looks.push(await moveOut(look, packing, parts));
    const face = pictures.findIndex(({ lineId }) => lineId === null);
    const shown: Shown = {
      address: kase.listing.url,
      price: kase.listing.price[0]?.value ?? null,
      face: looks[0]?.pictures[face]?.picture ?? null,
      head: headOf(kase),
    };
    return { ...record, shown, looks };
  },
};

type NamedLook = Omit<LookName, 'files'>;

async function moveOut({ case: kase, pictures: kept }: Look2, packing: Packing, parts: Parts): Promise<NamedLook> {
  const { listing, maker, judgedAt = listing.readAt } = kase;
  const look = look1.parse({
    version: 1,
    listing,
    photos: kase.photos.map(liftPhotoRead),
    judged: {
      at: judgedAt,
      rules: null,
      maker: maker === null ? null : { name: maker, file: null },
      found: foundIn(kase),
    },
  });
  const { hash, pictures, parts: made } = await storeLook(look, kept, packing);
  parts.looks.push(...made.looks);
  parts.pictures.push(...made.pictures);
  const { corrections = [] } = liftTypedCodes(kase) as Pick<LookName, 'corrections'>;
  return { look: hash, readAt: listing.readAt, judgedAt, corrections, pictures };
}

/** What can be understood of what was found: a conclusion of which nothing is known any more is worked out anew. */
const foundIn = ({ outcomes }: Case2): Found[] =>
  outcomes.flatMap((outcome) => {
    const { findings } = (outcome ?? {}) as { findings?: unknown };
    return (Array.isArray(findings) ? findings : []).flatMap((finding) => {
      const { check, kind, data } = (liftFinding(finding) ?? {}) as Partial<Found>;
      const found = found1.safeParse({ check, kind, data });
      return found.success ? [found.data] : [];
    });
  });

function headOf(kase: Case2): Shown['head'] {
  const found = foundIn(kase);
  const against = ['contradiction', 'doubt'].flatMap((kind) => found.filter((one) => one.kind === kind)).slice(0, 1);
  const open = against.length > 0 ? [] : found.filter(({ kind }) => kind === 'gap').slice(0, 1);
  const isSilent = against.length + open.length === 0;
  const read = new Set(kase.photos.flatMap(({ state, photoId }) => (state === 'read' ? [photoId] : [])));
  return {
    against,
    open,
    notLookedAt: {
      photos: isSilent ? kase.listing.photos.flatMap(({ id }, at) => (read.has(id) ? [] : [at + 1])) : [],
      failed: [],
      withoutFile: isSilent && kase.maker === null ? (kase.listing.maker[0]?.value ?? '') : null,
      reasons: [],
    },
  };
}
