import { describe, expect, it } from 'vitest';
import { answerOf, buildCase, type Case } from '../../../src/case';
import type { Decoding } from '../../../src/code/types';
import { builtInMakers } from '../../../src/maker';
import { listingOf } from './sample-listing';

const now = '2026-01-15T10:00:00Z';
const caseOf = (title: string, words: string, makers = builtInMakers): Case =>
  buildCase({ listing: listingOf(title, words, 2), photos: [], corrections: [], makers, now });

const quoted = caseOf('Ondrasse Carryall 30, 1987, made in Italy', 'Date code KV0915.');
const [reads] = quoted.decodings as [Decoding];
const inPhoto = (decoding: Decoding, photoId: string, code = decoding.code): Decoding => ({
  ...decoding,
  id: `${photoId} ${code}`,
  code,
  readings: decoding.readings.map((one) => ({ ...one, text: code })),
  from: { kind: 'photo', photoId, lineId: '1' },
});
const withCodes = (...decodings: Decoding[]): Case => ({ ...quoted, decodings });

describe('the answer', () => {
  it('sets what a code reads beside what the listing says, and draws no line between them', () => {
    const { stamp, said } = answerOf(quoted);
    expect(stamp).toMatchObject({ kind: 'reads', seenIn: { kind: 'listing' }, code: 'KV0915' });
    expect(said.dates.map(({ from }) => from)).toEqual(['1987-01-01']);
    expect(said.places).toEqual(['IT']);
  });

  it('takes a typed code before one in a photo, and that before a quoted one', () => {
    const [first] = quoted.listing.photos;
    const photo = inPhoto(reads, first?.id ?? '');
    const typed: Decoding = { ...reads, id: 't', from: { kind: 'typed' } };
    expect(answerOf(withCodes(reads, photo)).stamp).toMatchObject({ seenIn: { kind: 'photo', number: 1 } });
    expect(answerOf(withCodes(reads, photo, typed)).stamp).toMatchObject({ seenIn: { kind: 'typed' } });
  });

  it('names both where two photos show different codes', () => {
    const codes = withCodes(inPhoto(reads, 'a'), inPhoto(reads, 'b', 'KV0925'));
    expect(answerOf(codes).stamp).toMatchObject({ kind: 'several', codes: ['KV0915', 'KV0925'] });
  });

  it('says of a code without a file what its form alone allows, each once, and whether it fits', () => {
    const { stamp } = answerOf(caseOf('Velmar Lane tote, made in 1994', 'Date code A0194.', []));
    if (stamp.kind !== 'unexplained') throw new Error(stamp.kind);
    const says = stamp.forms.map(({ reading }) => JSON.stringify([reading.span, reading.places]));
    expect(new Set(says).size).toBe(says.length);
    for (const { reading, fits } of stamp.forms) {
      expect(reading.system.maker).toBeNull();
      expect(fits === null).toBe(reading.span === null);
    }
  });

  it('says a stamp that is not read for certain with what it may be', () => {
    const unsure = { ...inPhoto(reads, 'a'), accepted: false };
    expect(answerOf(withCodes(unsure)).stamp).toMatchObject({ kind: 'unsure', texts: ['KV0915'] });
  });

  it('tells photos without a stamp from photos that nobody could open', () => {
    expect(answerOf({ ...quoted, decodings: [] }).stamp).toEqual({ kind: 'unopened', photos: 2 });
  });
});
