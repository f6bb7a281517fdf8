import { expect, test } from 'vitest';
import { carrierIn } from '../../../src/take/said/carrier';

const each = (carrier: string | null, ...texts: string[]) =>
  expect(texts.map((text) => [text, carrierIn(text)])).toEqual(texts.map((text) => [text, carrier]));

test('what carries the code is told by the words for where it sits, in every language', () => {
  each(
    'tab',
    'on a leather tab under the inner pocket',
    'sur une languette de cuir',
    'auf einer Lederlasche',
    'su una linguetta di pelle',
  );
  each('tab', 'en una lengüeta de cuero', 'op een leren lipje', '内ポケットの革タブ', '革タブの裏');
  each(
    'sticker',
    'on a white sticker inside the pocket',
    'sur un autocollant',
    'auf einem Aufkleber',
    'su un’etichetta adesiva',
    'シール',
  );
  each('card', 'on a plastic card', 'sur une carte', 'auf einer Karte', 'en una tarjeta', 'op een kaartje');
  each('chip', 'in a chip under the lining', 'dans une puce', 'auf einem Chip im Futter');
  each('woven-label', 'on a woven label', 'sur une étiquette tissée', 'auf einem Webetikett');
});

test('what only stands near is no carrier, nor is a part that is named after one', () => {
  each(
    'stamp',
    'under the leather tab',
    'behind the small card',
    'stamped beside the sticker',
    'unter der Lasche',
    '革タブの下',
  );
  each(
    'stamp',
    'in the card pocket, on the lining',
    'im Kartenfach',
    'stamped into the base, inside',
    'behind the lock plate',
  );
});

test('a label of no sort is not guessed at', () =>
  each(null, 'on a label inside the pocket', 'auf einem Etikett', 'sur une étiquette'));
