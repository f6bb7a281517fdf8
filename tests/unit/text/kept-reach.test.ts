import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { otherWordsOf } from '../../other-words';
import { gapTurnsOf } from '../../turning';
import { reachLines } from './reach-lines';
import { datedShort, priced, readers, sized } from './readers';

/*
 * How far words reach: between a word and what it is said of stands more and more, and kept is where the answer turns.
 * Where that changes on purpose, `npm test -- unit/text/kept --update` writes it anew.
 */

function polarity(said: string): string {
  const start = said.search(/leather|レザー/);
  const end = start + (said.startsWith('leather', start) ? 7 : 3);
  const folded = text.foldWords(said).text;
  const around = text.clauseAround(folded, start, end);
  const sentence = text.sentenceAround(folded, start, end);
  return [
    text.polarityOf(folded, start, end),
    text.isNegated(folded, start, end) && 'negated',
    text.isLeftOpen(folded, start, end) && 'open',
    text.isAboutAnother(folded, start, end) && 'of another',
    around.start === 0 && 'from its start',
    around.end === folded.length && 'to its end',
    sentence.start === 0 && 'sentence',
    sentence.end === folded.length && 'to the end of it',
  ]
    .filter(Boolean)
    .join(', ');
}

const inShort: Record<string, (found: never) => string> = { price: priced, measure: sized, date: datedShort };

/** What was found, with the gap told as such. */
function read(name: string, said: string, gap: string, language: string): string {
  if (name === 'polarity') return polarity(said);
  const found = readers[name]!(said, language).map((one) => {
    const words = said.slice(one.start, one.end).replace(gap.trim() || /\s+/, '…');
    const value =
      inShort[name]?.({ ...one, words } as never) ?? `“${words}” ${JSON.stringify((one as { value?: unknown }).value)}`;
    return value;
  });
  return found.join('; ') || 'nothing';
}

const split = (all: string): [line: string, language: string, sentence: string][] =>
  all
    .split(/\s*\|/)
    .filter((line) => line !== '')
    .map((line) => {
      const language = /^([a-z]{2}):/.exec(line)?.[1];
      return [line, language ?? 'en', language ? line.slice(3) : line];
    });

it.each(Object.entries(reachLines))('how far words of a %s reach', async (name, all) => {
  const out = split(all).flatMap(([line, language, sentence]) => [
    line,
    ...gapTurnsOf(name === 'polarity' ? 170 : 66, (gap) => read(name, sentence.replace('…', gap), gap, language)),
  ]);
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot(`./kept/reach-${name.replaceAll(' ', '-')}.txt`);
});

it.each(Object.entries(reachLines))('what a longer word and one left out change of a %s', async (name, all) => {
  const out = split(all).flatMap(([, language, sentence]) => {
    const plain = sentence.replace('…', ' ').replace(/ {2,}/g, ' ');
    const answer = (said: string) =>
      name === 'polarity' && !/leather|レザー/.test(said) ? '' : read(name, said, '', language);
    return [`${plain}: ${answer(plain)}`, ...otherWordsOf(plain, answer).map((line) => `  ${line}`)];
  });
  await expect(`${out.join('\n')}\n`).toMatchFileSnapshot(`./kept/words-${name.replaceAll(' ', '-')}.txt`);
});
