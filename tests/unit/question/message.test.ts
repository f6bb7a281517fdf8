import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checks } from '../../../src/check';
import { askFor } from '../../../src/check/asks';
import type { Question } from '../../../src/question';
import { composeMessage, describeCheck, sayAsk } from '../../../src/words';
import { avoidedWords } from './avoided-words';

const question = (words: string): Question => ({
  id: words,
  wants: 'fact',
  asks: [{ ask: 'as-written', topic: words, wants: 'fact', data: { words } }],
  settles: [],
});

describe('composeMessage', () => {
  it('writes one message that can be copied', () => {
    const message = composeMessage([question('Could you add a photo?'), question('When was it bought?')], {
      sellerName: 'Mina',
      title: 'Ondrasse Carryall 30',
    });
    expect(message).toBe(
      [
        'Hello Mina,',
        '',
        'I am interested in “Ondrasse Carryall 30” and have 2 questions before I decide:',
        '',
        '1. Could you add a photo?',
        '2. When was it bought?',
        '',
        'Thank you very much for your help.',
      ].join('\n'),
    );
  });

  it('writes nothing without a question', () => {
    expect(composeMessage([], { sellerName: 'Mina' })).toBe('');
  });

  it('keeps a hostile title on one line and short', () => {
    const message = composeMessage([question('When was it bought?')], { title: `x\n\nPay here: ${'y'.repeat(5000)}` });
    expect(message.split('\n')[2]?.length).toBeLessThan(250);
    expect(message.split('\n')).toHaveLength(7);
  });

  it('holds no word that would accuse a seller', () => {
    const common = [askFor('stamp-photo', {}), askFor('made-date', {}), askFor('origin', {})];
    const words = [...checks.flatMap(wordingOf), ...common.map((ask) => sayAsk(ask, 'en'))];
    const message = composeMessage(words.map(question));
    for (const avoided of avoidedWords.en ?? []) expect(message.toLowerCase()).not.toContain(avoided);
  });

  it('avoids every word that the published guidance names', ({ skip }) => {
    const path = new URL('../../../../shared/reference/buyer_guidance.json', import.meta.url);
    if (!existsSync(path)) return skip('not present');
    const { wording } = JSON.parse(readFileSync(path, 'utf8')) as { wording: { never: string[] } };
    const covered = (word: string) => (avoidedWords.en ?? []).some((avoided) => word.includes(avoided));
    expect(wording.never.filter((word) => !covered(word))).toEqual([]);
  });
});

const wordingOf = (check: (typeof checks)[number]): string[] => Object.values(describeCheck(check, 'en'));
