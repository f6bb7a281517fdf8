import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { type Topic, tableWords, topicFinder, topics } from '../../../src/text/lexicon';
import { type Table, tables } from '../../../src/text/lexicon/tables';
import * as pageWords from '../../../src/text/page-words';
import { phraseFinder } from '../../../src/text/phrases';
import * as priceTable from '../../../src/text/price-table';
import { languages, lexiconSchema, plain, twiceIn } from './lexicon-form';
import { sharing, smallWords } from './shared-phrases';

const folder = new URL('../../../src/text/lexicon/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const tableFolder = new URL('table/', folder);
const tableFiles = readdirSync(tableFolder);
const all = Object.entries(topics) as [Topic, Record<(typeof languages)[number], readonly string[]>][];

/** Every two topics, of those that are not left out, with a phrase in both. */
function sharedPhrases(without: readonly Topic[] = smallWords): { topics: [Topic, Topic]; words: string[] }[] {
  const saying = all.filter(([topic]) => !without.includes(topic));
  const words = saying.map(([topic, lexicon]) => [topic, new Set(Object.values(lexicon).flat().map(plain))] as const);
  return words.flatMap(([one, own], at) =>
    words.slice(at + 1).flatMap(([other, others]) => {
      const both = [...own].filter((said) => others.has(said));
      return both.length > 0 ? [{ topics: [one, other] as [Topic, Topic], words: both }] : [];
    }),
  );
}

/** Where one topic holds, another must not: a phrase in both would say a thing and its contrary. */
const contrary: [Topic, Topic][] = [
  ['leather', 'leather-like'],
  ['gold-solid', 'gold-surface'],
  ['silver-solid', 'silver-surface'],
  ['brass-solid', 'brass-surface'],
  ['gold-solid', 'zinc-alloy'],
  ['silver-solid', 'zinc-alloy'],
  ['brass-solid', 'zinc-alloy'],
  ['wear', 'fresh-parts'],
  ['wear', 'stored'],
  ['assurance', 'copy-grade'],
  ['assurance', 'other-hand'],
  ['vintage', 'look'],
];

describe('the lexicon', () => {
  it('has one file a topic, and each is listed', () => {
    expect(files.map((name) => name.replace('.json', '')).sort()).toEqual(all.map(([topic]) => topic).sort());
  });

  it.each(files)('%s has words in every language, none twice after folding', (file) => {
    expect(twiceIn(lexiconSchema.parse(JSON.parse(readFileSync(new URL(file, folder), 'utf8'))))).toEqual([]);
  });

  it('has one file a table of values, and each is listed', () => {
    expect(tableFiles.map((name) => name.replace('.json', '')).sort()).toEqual(Object.keys(tables).sort());
  });

  it.each(tableFiles)(
    'table %s has words for every value in every language, and a phrase for one value only',
    (file) => {
      const table = z
        .record(z.string(), lexiconSchema)
        .parse(JSON.parse(readFileSync(new URL(file, tableFolder), 'utf8')));
      expect(Object.values(table).flatMap(twiceIn)).toEqual([]);
      const said = Object.entries(table).flatMap(([value, lexicon]) =>
        [...new Set(Object.values(lexicon).flat().map(plain))].map((words) => ({ value, words })),
      );
      const twice = said.filter(({ words }, at) => said.findIndex((other) => other.words === words) !== at);
      expect(twice).toEqual([]);
    },
  );

  it.each(Object.keys(tables) as Table[])('table %s finds every phrase that it holds, under its value', (name) => {
    const words = tableWords(name) as Record<string, readonly string[]>;
    const find = phraseFinder(words);
    const lost = Object.entries(words).flatMap(([value, phrases]) =>
      phrases
        .map((said) => said.replaceAll('*', '').replaceAll('#', '7'))
        .filter((said) => !find(`— ${said} —`).some((hit) => hit.value === value && plain(hit.words) === plain(said))),
    );
    expect(lost).toEqual([]);
  });

  it.each(Object.entries({ ...priceTable, ...pageWords }))(
    'the page’s own row “%s” has words in every language, none twice',
    (_, row) => {
      const words = Object.fromEntries(languages.map((language, at) => [language, row[at]?.split(', ')]));
      expect(twiceIn(lexiconSchema.parse(words))).toEqual([]);
    },
  );

  it.each(contrary)('%s and %s share no phrase', (one, other) => {
    const words = (topic: Topic) => new Set(Object.values(topics[topic]).flat().map(plain));
    const others = words(other);
    expect([...words(one)].filter((said) => others.has(said))).toEqual([]);
  });

  it('has no phrase in two topics that say something, but where it is argued why', () => {
    const excused = (one: Topic, other: Topic) =>
      sharing.some(({ topics }) => topics.includes(one) && topics.includes(other));
    expect(sharedPhrases().filter(({ topics: [one, other] }) => !excused(one, other))).toEqual([]);
  });

  it('argues for no topics that share nothing', () => {
    const shared = sharedPhrases();
    const idle = sharing.flatMap(({ topics }) =>
      topics.filter(
        (topic) => !shared.some(({ topics: two }) => two.includes(topic) && two.every((one) => topics.includes(one))),
      ),
    );
    expect(idle).toEqual([]);
    const all = sharedPhrases([]);
    const smallOnes = smallWords.filter((topic) => !all.some(({ topics: two }) => two.includes(topic)));
    expect(smallOnes).toEqual([]);
  });

  it('finds every phrase that it holds, under its topic', () => {
    const lost = all.flatMap(([topic, lexicon]) => {
      const find = topicFinder(topic);
      return Object.values(lexicon)
        .flat()
        .map((words) => words.replaceAll('*', '').replaceAll('#', '7'))
        .filter((words) => !find(`— ${words} —`).some((hit) => plain(hit.words) === plain(words)));
    });
    expect(lost).toEqual([]);
  });
});
