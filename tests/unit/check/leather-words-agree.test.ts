import { describe, expect, it } from 'vitest';
import { leatherWordsAgree } from '../../../src/check/leather-words-agree';
import { factsSaying, said } from './sample';

describe('leather-words-agree', () => {
  it.each([
    [
      'Full-grain leather outside. Vegan leather.',
      'doubt: The listing says “Full-grain leather” and also “Vegan leather”.',
    ],
    ['Cuir véritable … simili cuir', 'doubt: The listing says “Cuir véritable” and also “simili cuir”.'],
    ['Echtleder. Tasche aus Kunstleder', 'doubt: The listing says “Echtleder” and also “Kunstleder”.'],
    [
      'The lining is real leather. Lining: faux leather',
      'doubt: The listing says “real leather” and also “faux leather”.',
    ],
  ])('speaks on %j', (words, statement) => {
    expect(said(leatherWordsAgree, factsSaying(words))).toEqual([statement]);
  });
  it.each([
    'Real leather, faux leather lining',
    'Real leather bag with faux leather trim',
    'Real leather, comes with a faux leather pouch',
    'Cuir véritable, doublure en simili cuir',
    'Cuir véritable, bandoulière en simili cuir',
    'Echtleder, innen Kunstleder',
    'Echtes Leder, Futter aus Kunstleder',
    'Vera pelle, fodera in ecopelle',
    'Vera pelle, tracolla in ecopelle',
    'Piel auténtica, forro de polipiel',
    'Piel auténtica, correa de polipiel',
    'Echt leer, voering van kunstleer',
    'Echt leer, schouderband van kunstleer',
    '本革、裏地は合皮です',
    '本革です。ストラップは合皮',
  ])('takes no part for the piece: %j', (words) => {
    expect(said(leatherWordsAgree, factsSaying(words))).toEqual(['silent']);
  });
  it.each(['Real leather all over', 'Kunstleder', 'Bag with pultruded frame and lambskin'])(
    'is silent on %j',
    (words) => {
      expect(said(leatherWordsAgree, factsSaying(words))).toEqual(['silent']);
    },
  );
});
