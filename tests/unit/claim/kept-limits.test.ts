import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim';
import { appraisedClaims } from '../../../src/claim/appraised';
import { codeClaims } from '../../../src/claim/code';
import { hedgedAuthorshipClaims } from '../../../src/claim/hedged-authorship';
import { dateClaims } from '../../../src/claim/made';
import { materialClaims } from '../../../src/claim/material';
import { originClaims } from '../../../src/claim/origin';
import { type ClaimDraft, passagesOf } from '../../../src/claim/passage';
import { replacedClaims } from '../../../src/claim/replaced';
import type { Listing } from '../../../src/listing/types';
import { gaps, turnsOf } from '../../turning';
import { datedSentences } from './dated-sentences';
import { countedSentences, grownSentences } from './limit-sentences';
import { listingOf, ondrasse } from './listing-of';
import plainSentences from './plain-sentences.json' with { type: 'json' };

/*
 * The limits of the finders of codes, dates, events and hedges, with whole claims: how much may stand between, how many
 * of a thing are followed, and what each alternative says. Where that changes on purpose,
 * `npm test -- unit/claim/kept --update` writes it anew.
 */

type Finder = (listing: Listing) => (Claim | ClaimDraft)[];
const finders: Record<string, Finder> = {
  appraised: (listing) => appraisedClaims(passagesOf(listing), listing.readAt),
  code: (listing) => codeClaims(passagesOf(listing), [ondrasse]),
  hedged: (listing) => hedgedAuthorshipClaims(passagesOf(listing), [ondrasse], null),
  'hedged beside another': (listing) =>
    hedgedAuthorshipClaims(passagesOf(listing), [ondrasse], { names: ['Velmont'], file: null }),
  date: (listing) => dateClaims(passagesOf(listing), listing.readAt),
  material: (listing) => materialClaims(passagesOf(listing), listing, [ondrasse]),
  origin: (listing) => originClaims(passagesOf(listing)),
  replaced: (listing) => replacedClaims(passagesOf(listing), listing.readAt),
};

const whole = ({ kind, words, at, confidence, ...rest }: Claim | ClaimDraft, gap: string, place: boolean): string => {
  const said = Object.values(rest).map((value) => (typeof value === 'object' ? JSON.stringify(value) : String(value)));
  const quoted = gap.length > 1 ? words.replace(gap, '…') : words;
  return `${[kind, ...said].join(' ')} “${quoted}”${place ? ` ${at.start}–${at.end}` : ''} ${confidence}`;
};
const claimed = (finder: string, sentence: string, gap = '', place = false): string => {
  const [title, text] = sentence.includes(' // ') ? sentence.split(' // ') : ['', sentence];
  const found = (finders[finder] as Finder)(listingOf(title ?? '', text ?? ''));
  return found.map((claim) => whole(claim, gap, place)).join('; ') || 'nothing';
};

/** No limit in characters is greater than these, none in words or signs. */
const furthest = { letters: 104, 'text of words': 104, spaces: 12, words: 8, signs: 6 };

it('how far these words reach is as it is kept', async () => {
  const out = Object.entries(grownSentences).flatMap(([finder, sentences]) =>
    sentences.flatMap((sentence) => [
      `${finder}: ${sentence}`,
      ...Object.entries(furthest).flatMap(([filler, last]) => {
        const gap = gaps[filler]!;
        return turnsOf(last, (steps) => claimed(finder, sentence.replace('…', gap(steps)), gap(steps))).map(
          (turn) => `  ${filler} ${turn}`,
        );
      }),
    ]),
  );
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/limits.txt');
});

it('how many of a thing are followed is as it is kept', async () => {
  const out = Object.entries(countedSentences).flatMap(([finder, sentences]) =>
    Object.entries(sentences).flatMap(([name, sentence]) => [
      `${finder}: ${name}: ${sentence(3)}`,
      ...turnsOf(50, (steps) => claimed(finder, sentence(steps))).map(
        (turn) => `  ${turn.replace(/v{9,}|(?:va |of ){3,}/g, '…')}`,
      ),
    ]),
  );
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/counts.txt');
});

it('what each alternative says is as it is kept', async () => {
  const out = Object.entries({ ...plainSentences, date: [...datedSentences, ...plainSentences.date] }).flatMap(
    ([finder, sentences]) =>
      sentences.map((sentence) => `${finder}: ${sentence}: ${claimed(finder, sentence, '', true)}`),
  );
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot('./kept/plain.txt');
});
