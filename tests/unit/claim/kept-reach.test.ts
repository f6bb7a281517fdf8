import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim';
import type { ClaimDraft } from '../../../src/claim/passage';
import { otherWordsOf } from '../../other-words';
import { gapTurnsOf } from '../../turning';
import { type Finder, fileOf, finderIn, finders } from './finders';
import { listingOf, shortClaim } from './listing-of';
import { sentences } from './sentences';

/*
 * How far words reach: between a word and what it is said of stands more and more, and kept is where the answer turns.
 * Where that changes on purpose, `npm test -- unit/claim/kept --update` writes it anew.
 */

const said = (found: (Claim | ClaimDraft)[], gap: string): string =>
  found
    .map((claim) => `${shortClaim(claim as Claim)} “${claim.words.replace(gap, '…')}” ${claim.confidence}`)
    .join('; ') || 'nothing';

const answerOf = (finder: string, sentence: string, gap: string): string => {
  const [title, text] = sentence.includes(' // ') ? sentence.split(' // ') : ['', sentence];
  const grown = (one = '') => one.replace('…', gap);
  return said((finders[finder] as Finder)(listingOf(grown(title), grown(text), 'en')), gap);
};

const rows = Object.entries(sentences);

it.each(rows)('how far words reach is as it is kept: %s', async (name, all) => {
  const finder = finderIn(name);
  const out = all.flatMap((sentence) => [sentence, ...gapTurnsOf(66, (gap) => answerOf(finder, sentence, gap))]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot(`./kept/reach-${fileOf(name)}.txt`);
});

it.each(rows)('what a longer word and one left out change is as it is kept: %s', async (name, all) => {
  const finder = finderIn(name);
  const out = all.flatMap((sentence) => {
    const plain = sentence.replace('…', ' ').replace(/ {2,}/g, ' ');
    return [
      `${plain}: ${answerOf(finder, plain, ' ')}`,
      ...otherWordsOf(plain, (other) => answerOf(finder, other, ' ')).map((line) => `  ${line}`),
    ];
  });
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot(`./kept/words-${fileOf(name)}.txt`);
});
