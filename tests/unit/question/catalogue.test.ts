import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { askedTopics } from '../../../src/check/asks';
import type { Question } from '../../../src/question';
import { composeMessage, messageLanguageOf, messageLanguages } from '../../../src/words';
import { avoidedWords } from '../../../src/words/message/avoided-words';
import { topicOf, topics } from '../../../src/words/message/topics';

const folder = new URL('../../../src/check/', import.meta.url);
/** Topics as the checks' own files name them. */
const asked = readdirSync(folder)
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) => [...readFileSync(new URL(name, folder), 'utf8').matchAll(/ask(?:Photo|Fact)\(\s*['`]([a-z-]+)/g)])
  .map((match) => match[1] ?? '');

const questions: Question[] = topics.map((topic) => ({
  id: topic === 'part' ? 'part-lining' : topic,
  wants: 'fact',
  asks: [{ ask: 'as-written', topic, wants: 'fact', data: { words: `${topic}?` } }],
  settles: [],
}));

describe('the catalogue of messages', () => {
  it('knows every topic that a check asks about, and no other', () => {
    const known = new Set(
      [...askedTopics, ...asked]
        .filter((id) => id !== 'as-written')
        .map((id) => (id === 'part-' ? 'part' : topicOf(id))),
    );
    expect([...known].map(String).sort()).toEqual([...topics].sort());
  });

  it.each(messageLanguages.filter((one) => one !== 'en'))('asks everything in %s, in its own words', (language) => {
    const message = composeMessage(questions, { sellerName: 'Mina', title: 'Carryall 30', language });
    for (const { id } of questions) expect(message).not.toContain(`${topicOf(id)}?`);
    expect(message).toContain('Mina');
    expect(message).toContain('Carryall 30');
    expect(message.match(/^\d+\. /gm)).toHaveLength(topics.length);
  });

  it.each(messageLanguages)('accuses no one in %s', (language) => {
    const message = composeMessage(questions, { language }).toLowerCase();
    for (const avoided of avoidedWords[language] ?? []) expect(message).not.toContain(avoided);
    expect(avoidedWords[language]?.length).toBeGreaterThan(4);
  });

  it('asks once what two questions ask in the same words', () => {
    const two = ['part-lining', 'part-zip'].map((id) => ({
      id,
      wants: 'photo' as const,
      asks: [{ ask: 'as-written', topic: id, wants: 'photo' as const, data: { words: id } }],
      settles: [],
    }));
    expect(composeMessage(two, { language: 'nl' }).match(/scherpe foto/g)).toHaveLength(1);
  });

  it('takes the language of the listing, English when it has no words for it', () => {
    expect([null, 'de-AT', 'ja', 'pt-BR', 'EN-gb'].map(messageLanguageOf)).toEqual(['en', 'de', 'ja', 'en', 'en']);
  });
});
