import { type Case, caseSchema } from '../../../src/case/types';
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
