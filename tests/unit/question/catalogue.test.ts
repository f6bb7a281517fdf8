import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { askedTopics } from '../../../src/check/asks';
import { partSchema } from '../../../src/claim';
import type { Question } from '../../../src/question';
import { composeMessage, messageLanguageOf, messageLanguages } from '../../../src/words';
import { otherLanguages } from '../../../src/words/message/languages';
import { subjectOf, topics } from '../../../src/words/message/topics';
import { avoidedWords } from './avoided-words';

const folder = new URL('../../../src/check/', import.meta.url);
/** Topics as the checks' own files name them. */
const asked = readdirSync(folder)
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) => [...readFileSync(new URL(name, folder), 'utf8').matchAll(/ask(?:Photo|Fact)\(\s*['`]([a-z-]+)/g)])
  .map((match) => match[1] ?? '');

/** A question on a topic whose own words would show where a language has none. */
const questionOn = (id: string): Question => ({
  id,
  wants: 'fact',
  asks: [{ ask: 'as-written', topic: id, wants: 'fact', data: { words: `${id}?` } }],
  settles: [],
});
const questions = [...topics, 'part-lining'].map(questionOn);
const others = messageLanguages.filter((one) => one !== 'en');

describe('the catalogue of messages', () => {
  it('knows every topic that a check asks about, and no other', () => {
    const known = new Set([...askedTopics, ...asked].filter((id) => id !== 'as-written' && !id.startsWith('part-')));
    expect([...known].sort()).toEqual([...topics].sort());
    expect(subjectOf('part-dust-bag')).toEqual({ part: 'dust-bag' });
    expect(subjectOf('part-of-something')).toBeNull();
  });

  it.each(others)('asks everything in %s, in its own words', (language) => {
    const message = composeMessage(questions, { sellerName: 'Mina', title: 'Carryall 30', language });
    for (const { id } of questions) expect(message).not.toContain(`${id}?`);
    expect(message).toContain('Mina');
    expect(message).toContain('Carryall 30');
    expect(message.match(/^\d+\. /gm)).toHaveLength(questions.length);
  });

  it.each(messageLanguages)('accuses no one in %s', (language) => {
    const message = composeMessage(questions, { language }).toLowerCase();
    for (const avoided of avoidedWords[language] ?? []) expect(message).not.toContain(avoided);
    expect(avoidedWords[language]?.length).toBeGreaterThan(4);
  });

  it.each(others)('names every part in %s, each by a name of its own', (language) => {
    const { parts } = otherLanguages[language as keyof typeof otherLanguages];
    expect(Object.keys(parts).sort()).toEqual([...partSchema.options].sort());
    const names = Object.values(parts);
    expect(new Set(names).size).toBe(names.length);
    const asked = partSchema.options.map((part) => questionOn(`part-${part}`));
    const lines = composeMessage(asked, { language })
      .split('\n')
      .filter((line) => /^\d+\. /.test(line));
    expect(lines).toHaveLength(asked.length);
    for (const [index, name] of names.entries())
      expect(
        lines.some((line) => line.includes(name)),
        `${index} ${name}`,
      ).toBe(true);
  });

  it('asks after two parts in two questions, each naming its part', () => {
    const two = ['part-lining', 'part-zip'].map(questionOn);
    expect(composeMessage(two, { language: 'de' }).split('\n').slice(4, 6)).toEqual([
      '1. Könnten Sie ein scharfes Foto dieses Teils ergänzen: Futter? Wurde daran je etwas repariert oder ersetzt?',
      '2. Könnten Sie ein scharfes Foto dieses Teils ergänzen: Reißverschluss? Wurde daran je etwas repariert oder ersetzt?',
    ]);
  });

  it('asks once what two questions ask in the same words', () => {
    const two = ['seller', 'seller'].map(questionOn);
    expect(composeMessage(two, { language: 'nl' }).match(/verkocht/g)).toHaveLength(1);
  });

  it('takes the language of the listing, English when it has no words for it', () => {
    expect([null, 'de-AT', 'ja', 'pt-BR', 'EN-gb'].map(messageLanguageOf)).toEqual(['en', 'de', 'ja', 'en', 'en']);
  });
});
