import { type Case, caseSchema } from '../../../src/case/types';
import { packing } from '../../../src/store/packing';
import type { WatchRecord } from '../../../src/watch';
import { latestLookOf } from '../../../src/watch/saved-case';
import { blankListing } from '../blank-listing';

/** A valid case of an invented listing, as small as the schema allows. */
export const sampleCase = (
  url = 'https://attic-arcade.example/item/7',
  title = 'Ondrasse Carryall 30',
  readAt = '2026-03-01T10:00:00.000Z',
): Case =>
  caseSchema.parse({
    format: 1,
    listing: {
      ...blankListing,
      url,
      readAt,
      title: [{ value: title, origin: 'json-ld', where: 'name', confidence: 0.9 }],
      text: title,
    },
    photos: [],
    corrections: [],
    maker: null,
    claims: [],
    decodings: [],
    marks: [],
    evidence: [],
    outcomes: [],
    questions: [],
    summary: { contradictions: 0, doubts: 0, gaps: 0, agreements: 0 },
    skipped: [],
  });

/** A case whose listing names an address that no page may bring in: only a file from elsewhere can hold it. */
export const caseAt = (address: string, title?: string): Case => {
  const made = sampleCase(undefined, title);
  return { ...made, listing: { ...made.listing, url: address } };
};

/** A record of one look, whatever it shows. */
export const sampleRecord = (over: Partial<WatchRecord> = {}): WatchRecord => ({
  version: 9,
  sentChanges: [],
  id: 'case-1',
  title: 'Ondrasse Carryall 30',
  savedAt: '2026-03-01T10:05:00.000Z',
  changedAt: '2026-03-01T10:05:00.000Z',
  status: 'watching',
  note: '',
  otherNotes: [],
  asked: [],
  dated: null,
  shown: {
    address: 'https://attic-arcade.example/item/7',
    price: null,
    face: null,
    head: {
      against: [],
      open: [],
      aside: false,
      notLookedAt: { photos: [], failed: [], withoutFile: null, reasons: [] },
    },
  },
  looks: [
    {
      look: '0'.repeat(64),
      readAt: '2026-03-01T10:00:00.000Z',
      judgedAt: '2026-03-01T10:00:00.000Z',
      corrections: [],
      pictures: [],
      files: [],
    },
  ],
  removedAt: null,
  ...over,
});

/** The record of a case, as saving it makes one. */
export async function recordOf(kase: Case): Promise<WatchRecord> {
  const made = await latestLookOf(kase, [], { rules: 'test', makers: [] }, packing);
  if (!made.ok) throw new Error(JSON.stringify(made.problem));
  return sampleRecord(made.value.latest);
}
