import { describe, expect, it } from 'vitest';
import { claimsBeginning, claimsOf } from './listing-of';

const codes = (text: string, language: string | null = null) => claimsBeginning('code', text, language);

describe('words for a stamp, and where it stands', () => {
  it.each([
    'Works number 51934.',
    'Numéro de fabrique : 51934.',
    'Herstellungsnummer 51934.',
    'Numero di fabbricazione 51934.',
    'Nº de fábrica 51934.',
    'Productienummer 51934.',
    '製造ナンバー 51934',
  ])('the number that a factory gave: %s', (text) => expect(codes(text)).toEqual(['code 51934']));

  it.each([
    'Blind stamp LD2047 in the pocket.',
    'Cachet LD2047 dans la poche.',
    'Prägestempel LD2047 im Fach.',
    'Punzone LD2047 nel taschino.',
    'Golpe seco LD2047 en el bolsillo.',
    'Blindstempel LD2047 in het vak.',
    '焼印LD2047が内側にあります。',
  ])('how it was pressed in: %s', (text) => expect(codes(text)).toEqual(['code LD2047']));

  it.each(['B47 gestempeld.', 'C81 eingeprägt.', 'D26 stamped.', 'H93 poinçonné.', 'K15 punzonato.', 'M64 grabado.'])(
    'a letter and two digits right before the word: %s',
    (text) => expect(codes(text)).toEqual([`code ${text.slice(0, 3)}`]),
  );

  it.each([
    ['Auf dem Schild steht 07/88.', 'code 07/88'],
    ['On the label it says 11/92.', 'code 11/92'],
    ['Sur l’étiquette on lit 03/91.', 'code 03/91'],
    ['Sull’etichetta si legge 05/89.', 'code 05/89'],
  ])('two numbers on a label: %s', (text, code) => expect(codes(text)).toEqual([code]));

  it.each([
    'Auf dem Schild steht 1988.',
    'Preis auf dem Schild 120.',
    'Inside it says 30 x 20.',
    'We had 200 cards printed.',
  ])('a year, a price, a size or a count is none: %s', (text) => expect(codes(text)).toEqual([]));
});

describe('whose year it is', () => {
  it.each([
    'Mine is from 1997, judging by the tag.',
    'Ours is from 1997.',
    'Meine stammt aus 1997.',
    'La mienne est de 1997.',
    'Il mio è del 1997.',
    'La mía es de 1997.',
    'De onze is uit 1997.',
    '私のは1997年のものです。',
  ])('a possessive by itself is the piece: %s', (text) =>
    expect(claimsBeginning('made', text)).toEqual(['made 1997-1997']),
  );
  it.each([
    'My sister is from 1997.',
    'Meine Tochter ist von 1997.',
    'Mine were shoes from 1997.',
    'Meine Schuhe sind von 1997.',
  ])('with a noun behind it it is not: %s', (text) => expect(claimsBeginning('made', text)).toEqual([]));

  it.each([
    'The bag that my sister gave me when I moved out, in 1999.',
    'Le sac que mes voisins m’ont offert quand je suis partie, en 1999.',
    'Die Tasche wurde mir 1999 zur Pensionierung überreicht.',
    'La borsa che mi hanno regalato i colleghi nel 1999.',
    'El bolso que nos regalaron en 1999.',
    'De tas die mijn zussen me gaven bij mijn afscheid in 1999.',
    '形見として1999年に引き継いだバッグです。',
  ])('what was given then: %s', (text) => expect(claimsBeginning('bought', text)).toEqual(['bought 1999-1999']));
});

describe('a part of its own behind a new one', () => {
  it.each([
    ['New zip, lining like new.', ['replaced zip']],
    ['Neuer Griff, Futter sauber.', ['replaced handle']],
    ['New zip, lining and handle.', ['replaced zip+lining+handle']],
    ['New zip, lining, by a cobbler in 2019.', ['replaced zip+lining']],
  ])('%s', (text, claims) => expect(claimsBeginning('replaced', text)).toEqual(claims));
});

describe('refusals', () => {
  it.each([
    'Refund is not possible.',
    'Les remboursements ne sont pas possibles.',
    'Eine Erstattung oder Rückgabe ist nicht vorgesehen.',
    'Il reso non è previsto.',
    'No es posible la devolución.',
    'Een retour is helaas niet mogelijk.',
    'It cannot be sent back.',
    'Die Tasche kann nicht zurückgeschickt werden.',
    'Kan niet worden teruggestuurd.',
    'Non può essere restituita.',
    'No se puede devolver.',
  ])('what cannot go back: %s', (text) => expect(claimsBeginning('returns', text)).toContain('returns no'));
  it.each([
    'I never had to return it.',
    'Il tempo non l’ha reso opaco.',
    'Worn items cannot be returned.',
    'It cannot be returned after 14 days.',
    'I have not sent it back.',
    'Nie hat mir jemand etwas zurückgeschickt.',
  ])('what refuses nothing: %s', (text) =>
    expect(claimsOf(text, null).filter((one) => one === 'returns no')).toEqual([]),
  );
});
