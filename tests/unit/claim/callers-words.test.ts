import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { builtInMakers } from '../../../src/maker';
import { listingOf, shortClaim } from './listing-of';

const told = (kind: string, description: string, title = 'Ondrasse Carryall 30') =>
  findClaims(listingOf(title, description, null), builtInMakers).flatMap((one) =>
    one.kind === kind ? [one.kind === 'code' ? one.code : shortClaim(one)] : [],
  );

describe('what honest sellers write that could be held against them', () => {
  it.each([
    'Stamped HJ1929, not HJ1992 as the title of my first advert had it.',
    'By mistake I had put HJ1992. It reads HJ1929.',
    'Stempel HJ1929 und nicht HJ1992.',
    'Versehentlich stand hier HJ1992, richtig ist HJ1929.',
    'Tampon HJ1929 et pas HJ1992.',
    'J’avais mis HJ1992, mais c’est HJ1929.',
    'Timbro HJ1929, non HJ1992.',
    'Sello HJ1929, no HJ1992.',
    'Stempel HJ1929, niet HJ1992.',
    '刻印はHJ1992ではなくHJ1929です。',
    '前はHJ1992と記載しましたが、HJ1929が正しいです。',
  ])('a code that is taken back is none: %s', (text) => {
    expect(told('code', text)).toEqual(['HJ1929']);
  });
  it.each([
    ['Not easy to read: HJ1929.', ['HJ1929']],
    ['Stamp HJ1929. The strap, which is not the first one, has LD2047 on it.', ['HJ1929', 'LD2047']],
    ['It is not HJ1992.', ['HJ1992']],
  ] as [string, string[]][])('a code that none replaces stands: %s', (text, codes) => {
    expect(told('code', text)).toEqual(codes);
  });

  it.each([
    'Gift box made in Vietnam. Made in Belgium, the Carryall itself.',
    'Karton, hergestellt in Polen. Die Tasche: made in Belgium.',
    'Pochon en coton fabriqué au Portugal. Sac : made in Belgium.',
    'Scatola fatta in Romania. Borsa: made in Belgium.',
    'Caja hecha en Marruecos. Bolso: made in Belgium.',
    'Stofzak gemaakt in Turkije. Tas: made in Belgium.',
    '保存袋は中国製です。バッグはベルギー製です。',
  ])('where a box was made is nothing of the piece: %s', (text) => {
    expect(told('origin', text).filter((one) => one !== 'origin BE')).toEqual([]);
  });
  it.each([
    'With dust bag, made in Spain.',
    'Dust bag and card included. Made in Spain.',
    'Label inside: made in Spain.',
    'The dust bag is lost. The bag was made in Spain.',
  ])('the origin of the piece stands beside what comes along: %s', (text) => {
    expect(told('origin', text)).toEqual(['origin ES']);
  });

  it.each([
    'Never used by me, my aunt carried it daily.',
    'Von mir nie benutzt, von Oma schon.',
    'Jamais utilisée par moi, souvent par elle.',
    'Mai indossata da me, sempre da mamma.',
    'Nunca usado por mí, sí por mi madre.',
    'Nooit gebruikt door mij.',
    'Unused since 1999.',
    'Sinds 1999 ongebruikt.',
    '1999年から未使用です。',
  ])('what one owner did not use, or of late, is not unused: %s', (text) => {
    expect(told('condition', text).filter((one) => one === 'condition unused')).toEqual([]);
  });
  it.each(['Never used, bought by me in 2020.', 'Unused. Mine since 1999.'])(
    'unused stands where all is: %s',
    (text) => {
      expect(told('condition', text)).toContain('condition unused');
    },
  );

  it.each([
    ['The stamp is worn.', []],
    ['Der Stempel ist abgenutzt.', []],
    ['Stamp KV0915, the bag is well worn.', ['condition worn']],
  ] as [string, string[]][])('a worn stamp is no worn piece: %s', (text, conditions) => {
    expect(told('condition', text).filter((one) => one === 'condition worn')).toEqual(conditions);
  });

  it.each([
    'A satchel with a 1960s spirit.',
    'Stile retrò, anni 60.',
    'Style bohème, années 70.',
    'Sfeer van de jaren zestig.',
    '60年代のような形です。',
    'The model is from 1975, mine is younger.',
    'Das Modell ist von 1975, meine hier ist jünger.',
    'Le modèle est de 1975, le mien est plus récent.',
    'Ontwerp uit de jaren zeventig, in 2015 opnieuw uitgebracht.',
    'Relaunched design of the seventies.',
    'La linea risale al 1978 ma la mia è molto più giovane.',
    'Dit model bestond al in 1978, maar de mijne is jonger.',
  ])('a look, a model and what came out anew date no piece: %s', (text) => {
    expect(told('made', text)).toEqual([]);
  });
  it.each([
    ['My neighbour swears it is from 1985, the stamp says 1995.', []],
    ['My neighbour says it was made in 1985.', []],
    ['Vintage bag in good style, made in the seventies.', ['made 1970-1979']],
  ] as [string, string[]][])('what others said dates nothing: %s', (text, made) => {
    expect(told('made', text).filter((one) => !one.includes('1995'))).toEqual(made);
  });
  it('a year of making stands ahead of a purchase', () => {
    expect(told('made', 'Produced in the late 2000s and bought by us at a fair.')).toHaveLength(1);
    expect(told('bought', 'Produced in the late 2000s and bought by us at a fair.')).toEqual([]);
    expect(told('bought', '2005 in Rom gekauft')).toHaveLength(1);
  });
  it.each(['Ma tante disait 1988, le numéro dit 1995.', 'Mio zio dice 1988, il numero dice 1995.'])(
    'a year that is read out of a number is no code: %s',
    (text) => {
      expect(told('code', text)).toEqual([]);
    },
  );
  it.each([
    ['Bank transfer only after viewing.', 0],
    ['Überweisung erst nach Besichtigung.', 0],
    ['Bank transfer, then I send it.', 1],
    ['Überweisung oder bei Abholung bar.', 1],
  ] as [string, number][])('who pays when the piece was seen is safe: %s', (text, claims) => {
    expect(told('payment-outside', text)).toHaveLength(claims);
  });
});
