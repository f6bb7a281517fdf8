import { describe, expect, it } from 'vitest';
import { claimsBeginning as heard } from './listing-of';

describe('a seller who does not know', () => {
  it.each([
    "I honestly couldn't tell you whether she is the real deal.",
    'No proof that this one is genuine, so priced low.',
    "Got it at a fair, can't promise it's original.",
    'Is it authentic? Real or not, I have no idea if it is legit.',
    'Je ne peux pas garantir que ce soit un vrai, je ne sais plus d’où il vient.',
    'Aucune garantie sur son authenticité.',
    'Ob die echt ist, weiß ich nicht.',
    'Keine Garantie, dass es ein Original ist.',
    'Non sono sicura che sia autentica.',
    'Non posso confermare che sia originale.',
    'No puedo confirmar que sea auténtico.',
    'No tengo ni idea de si es original.',
    'Geen garantie dat het echt is.',
    'Of hij echt is durf ik niet te zeggen.',
    '本物かは分かりかねます。',
    '真贋については判断できません。',
  ])('“%s”', (words) => expect(heard('not-vouched', words)).toHaveLength(1));

  it.each([
    "I don't know the original price.",
    'Not sure if the strap is original.',
    'I cannot tell whether the leather is real.',
    'No idea what the real value is.',
    "If you are not sure it's authentic, have it looked at.",
    'Wenn Sie nicht sicher sind, ob sie echt ist, lassen Sie sie prüfen.',
    'Falls du nicht sicher bist, ob sie echt ist, frag bitte.',
    'I can guarantee it is authentic.',
    'I know that it is real, bought in the shop.',
    'Je ne sais pas si la bandoulière est originale.',
    'Ich weiß nicht, ob das Futter original ist.',
    'Non so se la fodera sia originale.',
    'No sé si la cremallera es original.',
    'Weet niet of de rits origineel is.',
  ])('says nothing of the piece: “%s”', (words) => expect(heard('not-vouched', words)).toEqual([]));
});

describe('a seller who finds no code', () => {
  it.each([
    'Could not find any stamp inside.',
    'I looked for a number but never found one.',
    'Je n’ai pas trouvé de numéro.',
    'Den Code habe ich nicht gefunden.',
    'Ein Stempel ist nicht drin.',
    'Non ho trovato il codice.',
    'No encuentro el número.',
    'Code zit er niet in.',
    'Een nummer kan ik niet vinden.',
  ])('“%s”', (words) => expect(heard('no-code', words)).toHaveLength(1));
});

describe('a payment that nothing protects, by the name of friends', () => {
  it.each([
    'Paypal friends only',
    'PayPal Freunde wäre mir lieb',
    'paypal entre amis',
    'paypal amici',
    'pay pal f&f pls',
  ])('“%s”', (words) => expect(heard('payment-outside', words)).toHaveLength(1));
});
