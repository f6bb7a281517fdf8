import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf } from './listing-of';

/** Of each word for an imitation, whether it is of some part only. */
const imitations = (text: string) =>
  findClaims(listingOf('A brown bag', text), []).flatMap((claim) =>
    claim.kind === 'leather' && !claim.real ? [claim.inPart ?? false] : [],
  );

describe('an imitation named in one breath with leather', () => {
  it.each([
    'Genuine leather and faux leather.',
    'Genuine leather with details in faux leather.',
    'Cuir véritable et simili cuir.',
    'Echtleder mit Kunstleder.',
    'Echtleder, Kunstleder.',
    'Vera pelle con inserti in ecopelle.',
    'Piel auténtica y polipiel.',
    'Echt leer en kunstleer.',
    '本革と合皮のコンビです。',
    '本革×合皮',
  ])('is of some part: %s', (text) => expect(imitations(text)).toEqual([true]));

  it.each([
    'Genuine leather. The bag is made of faux leather.',
    'Genuine leather bag. Faux leather.',
    'Echtleder, die Tasche ist aus Kunstleder.',
    'Vera pelle. La borsa è in ecopelle.',
    'Kein Kunstleder, echtes Leder.',
    'Not genuine leather, faux leather.',
    'The bag is made of faux leather.',
  ])('is of the piece where the text goes on to another statement: %s', (text) =>
    expect(imitations(text)).toEqual([false]),
  );
});

describe('leather of the handles alone', () => {
  it.each(['合皮です。持ち手だけ本革です。', '持ち手部分のみ本革、他は合皮です。'])('is told of them: %s', (text) => {
    const parts = findClaims(listingOf('トートバッグ', text, 'ja'), []).flatMap((claim) =>
      claim.kind === 'leather' && claim.real ? [claim.of] : [],
    );
    expect(parts).toEqual(['handle']);
  });
});
