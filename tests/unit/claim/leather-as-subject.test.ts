import { describe, expect, it } from 'vitest';
import { claimsOf, told } from './listing-of';

const material = (text: string, title = '') => claimsOf(text, null, title).filter((claim) => claim.includes(' = '));
const worn = (text: string) => told(['wear', 'not wear'], text);

describe('a sentence with the leather for its subject', () => {
  it.each([
    'The leather feels rather dry.',
    'Das Leder wirkt ein wenig spröde.',
    'Le cuir est légèrement desséché.',
    'La pelle risulta piuttosto secca.',
    'El cuero está bastante seco.',
    'Het leer voelt iets droog.',
    'レザーはかなり乾燥しています。',
  ])('tells what the piece is of, and that it is worn: %s', (text) => {
    expect(material(text)).toEqual(['body = leather']);
    expect(worn(text)).toContain('wear');
  });

  it.each([
    ['The leather is goatskin.', 'body = goatskin'],
    ['Das Leder ist Schweinsleder.', 'body = pigskin'],
    ['Le cuir est de l’agneau.', 'body = lambskin'],
    ['La pelle è capra.', 'body = leather goatskin'],
    ['La piel es de ternera.', 'body = calfskin'],
    ['Het leer is nubuck.', 'body = nubuck'],
  ])('names the kind of it: %s', (text, claim) => expect(material(text)).toEqual([claim]));

  it.each([
    'It is calfskin.',
    'C’est du veau.',
    'Sie ist aus Ziegenleder.',
    'È in cuoio.',
    'Es de cuero.',
    'Het is kalfsleer.',
  ])('or a pronoun is the piece: %s', (text) => expect(material(text)).toHaveLength(1));

  it.each([
    'The pouch is rather dry.',
    'Schuhe: das Leder ist trocken.',
    'The leather of the box is dry.',
    'The belt is long. It is leather.',
    'Il y a aussi des gants. Ils sont en cuir.',
    'Store it somewhere dry.',
  ])('of another thing says nothing of the piece: %s', (text) => expect(material(text)).toEqual([]));

  it.each([
    ['Canvas shopper, leather trim. The leather is a little dry.', ['body = canvas', 'trim = leather']],
    ['Nylon backpack. The leather is very soft.', ['body = nylon']],
    ['Tasche mit Henkeln aus Leder. Das Leder ist weich.', []],
  ])('leaves open what the piece is where other materials are named: %s', (text, claims) =>
    expect(material(text).filter((claim) => /^(?:body|trim)/.test(claim))).toEqual(claims),
  );

  it.each([
    'The leather is not dry.',
    'Das Leder ist nicht trocken.',
    'La piel no está seca.',
    'Keep the leather dry.',
  ])('shows no wear where it denies or advises: %s', (text) =>
    expect(worn(text).filter((claim) => claim === 'wear')).toEqual([]),
  );
});

describe('real leather, and leather stamped as another hide', () => {
  it.each([
    'Piel de verdad.',
    'Véritable cuir.',
    'Vero cuoio.',
    'Echt leder.',
    'Cuir façon autruche.',
    'Pelle stampata pitone.',
    'Piel grabada cocodrilo.',
    'Leder mit Krokoprägung.',
  ])('%s', (text) => expect(material(text)).toEqual(['body = leather']));
});
