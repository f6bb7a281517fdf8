import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim';
import type { ClaimDraft } from '../../../src/claim/passage';
import { gaps, turnsOf } from '../../turning';
import { datedSentences } from './dated-sentences';
import { type Finder, fileOf, finderIn, finders } from './finders';
import { countedSentences, grownSentences } from './limit-sentences';
import { listingOf } from './listing-of';
import plainSentences from './plain-sentences.json' with { type: 'json' };

/*
 * The limits of the finders of codes, dates, events and hedges, with whole claims: how much may stand between, how many
 * of a thing are followed, and what each alternative says. Where that changes on purpose,
 * `npm test -- unit/claim/kept --update` writes it anew.
 */

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

it.each(Object.entries(grownSentences))('how far these words reach is as it is kept: %s', async (name, sentences) => {
  const finder = finderIn(name);
  const out = sentences.flatMap((sentence) => [
    sentence,
    ...Object.entries(furthest).flatMap(([filler, last]) => {
      const gap = gaps[filler]!;
      return turnsOf(last, (steps) => claimed(finder, sentence.replace('…', gap(steps)), gap(steps))).map(
        (turn) => `  ${filler} ${turn}`,
      );
    }),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot(`./kept/limits-${fileOf(name)}.txt`);
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
