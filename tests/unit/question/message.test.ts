import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checks } from '../../../src/check';
import { askFor } from '../../../src/check/asks';
import type { Question } from '../../../src/question';
import { composeMessage, describeCheck, type MessageLanguage, messageLanguages, sayAsk } from '../../../src/words';
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

describe('where the code sits', () => {
  const where = ['behind the inner pocket', 'on the strap tab'];
  const onCode = (...asks: { where?: string[] }[]): Question => ({
    id: 'stamp-photo',
    wants: 'photo',
    asks: asks.map((data) => askFor('stamp-photo', data)),
    settles: [],
  });
  const asked = (language: MessageLanguage, question: Question) =>
    composeMessage([question], { language }).split('\n')[4];

  it('is told with the question for its photo in every language of a message', () => {
    const question = onCode({ where });
    expect(Object.fromEntries(messageLanguages.map((language) => [language, asked(language, question)]))).toEqual({
      en: 'Could you add a sharp, close photo of the stamped code, straight from above and in daylight? It should be here: “behind the inner pocket” or “on the strap tab”.',
      de: 'Könnten Sie ein scharfes Foto des geprägten Codes ergänzen, nah, gerade von oben und bei Tageslicht? Er sollte hier sitzen: „behind the inner pocket“ oder „on the strap tab“.',
      es: '¿Podría añadir una foto nítida y de cerca del código grabado, de frente y con luz de día? Debería estar aquí: «behind the inner pocket» o «on the strap tab».',
      fr: 'Pourriez-vous ajouter une photo nette et rapprochée du code frappé, prise de face et à la lumière du jour ? Il devrait se trouver ici : « behind the inner pocket » ou « on the strap tab ».',
      it: 'Potrebbe aggiungere una foto nitida e ravvicinata del codice impresso, dall’alto e alla luce del giorno? Dovrebbe trovarsi qui: «behind the inner pocket» o «on the strap tab».',
      ja: '刻印のコードを、明るい自然光で真上から近くではっきり撮った写真を追加していただけますか。刻印は「behind the inner pocket」または「on the strap tab」にあるはずです。',
      nl: 'Kunt u een scherpe foto van dichtbij van de gestempelde code toevoegen, recht van boven en bij daglicht? Die hoort hier te zitten: ‘behind the inner pocket’ of ‘on the strap tab’.',
    });
  });

  it('is told once when only one of several findings knows it, and not where none does', () => {
    for (const language of messageLanguages) {
      const one = asked(language, onCode({ where: ['in the lid'] }));
      expect(asked(language, onCode({}, { where: ['in the lid'] }))).toBe(one);
      expect(one?.startsWith(asked(language, onCode({})) ?? '')).toBe(true);
      expect(asked(language, onCode({}))).not.toContain('in the lid');
    }
  });
});
