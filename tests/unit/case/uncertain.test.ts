import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildCase, findingsOf } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { inEnglish } from '../../said';
import { readPhoto, stampLine } from '../check/sample';
import { listingOf } from './sample-listing';

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);

const characters = [...'ABCDEFGHJKLMNPQRSTUVWXYZ0123456789'];
/** A step on which no character is likelier than two in five. */
const doubtfulStep = fc
  .tuple(fc.constantFrom(...characters), fc.constantFrom(...characters), fc.double({ min: 0.1, max: 0.4, noNaN: true }))
  .map(
    ([first, second, share]): Record<string, number> =>
      first === second ? { [first]: share } : { [first]: share, [second]: 0.4 },
  );
const sentences = fc.constantFrom(
  'Ondrasse Carryall 30 made in 1987 in Italy.',
  'Ondrasse Pochette 22 from 2018.',
  'Ondrasse bag of the 1970s, made in Belgium.',
  'Tessaro Vell Sporta 40 of 1998, bought in 1990.',
  'Calderwick & Rook Ledger 32, 1963, made in France.',
);

describe('a stamp that is not certain', { timeout: 120_000 }, () => {
  it('contradicts nothing, whatever the listing claims', () => {
    const lattices = fc.array(doubtfulStep, { minLength: 3, maxLength: 10 });
    fc.assert(
      fc.property(sentences, lattices, fc.double({ min: 0, max: 1, noNaN: true }), (text, steps, stampScore) => {
        const free = { text: steps.map((step) => Object.keys(step)[0]).join(''), probability: 0.4 ** steps.length };
        const line = stampLine('p1', free.text, { lattice: { steps }, free, stampScore });
        const built = buildCase({
          listing: listingOf('A bag', text, 1),
          photos: [readPhoto('p1', { lines: [line] })],
          corrections: [],
          makers: builtInMakers,
          now: '2026-01-15T10:00:00Z',
        });
        // Two dates or a date and a material of the text itself may contradict; the stamp may not.
        const stamped = findingsOf(built)
          .map(inEnglish)
          .filter(({ kind, photos }) => kind === 'contradiction' && photos.length > 0);
        expect(stamped.map(({ statement }) => statement)).toEqual([]);
      }),
      { seed, numRuns: 60 },
    );
  });

  it('gives one case for one input, in whatever order the makers stand', () => {
    fc.assert(
      fc.property(sentences, fc.shuffledSubarray(builtInMakers, { minLength: 3 }), (text, makers) => {
        const input = {
          listing: listingOf('A bag', text, 1),
          photos: [],
          corrections: [],
          now: '2026-01-15T10:00:00Z',
        };
        const one = buildCase({ ...input, makers: builtInMakers });
        const other = buildCase({ ...input, makers });
        expect(
          findingsOf(other)
            .map(inEnglish)
            .map(({ statement }) => statement),
        ).toEqual(
          findingsOf(one)
            .map(inEnglish)
            .map(({ statement }) => statement),
        );
      }),
      { seed, numRuns: 20 },
    );
  });
});
