import { describe, expect, it } from 'vitest';
import { parseMeasures } from '../../../src/text';

const sides = (text: string, language: string) =>
  parseMeasures(text, language).map(({ measure: { dimension, mm } }) => `${dimension} ${mm}`);

describe('lengths that are no side of the piece', () => {
  it.each([
    ['en', 'Stands 36 cm tall with its handles.'],
    ['en', 'With the handles raised 36 cm.'],
    ['de', 'Samt Griffen 36 cm hoch.'],
    ['fr', 'Anses comprises, 36 cm de haut.'],
    ['it', 'Alta 36 cm con i manici.'],
    ['es', 'Con las asas 36 cm de alto.'],
    ['nl', 'Inclusief hengsels 36 cm hoog.'],
    ['ja', 'ハンドル込みで高さ36cm'],
  ])('with its handles up (%s)', (language, text) => expect(sides(text, language)).toEqual([]));
  it.each([
    ['en', 'Parcel 50 x 40 x 30 cm'],
    ['de', 'Päckchen 50 x 40 x 30 cm'],
    ['fr', 'Colis de 50 x 40 x 30 cm'],
    ['it', 'Imballo 50 x 40 x 30 cm'],
    ['es', 'Caja de 50 x 40 x 30 cm para el envío'],
    ['nl', 'Verzenddoos 50 x 40 x 30 cm'],
    ['ja', '梱包 50×40×30cm'],
  ])('what it is sent in (%s)', (language, text) => expect(sides(text, language)).toEqual([]));
  it.each([
    ['en', 'The mug beside it is 9 cm high.'],
    ['de', 'Ein Lineal zum Vergleich, 30 cm lang.'],
    ['fr', 'Je fais 1m58 et il me va.'],
    ['it', 'Sono alta 1,70 m.'],
    ['es', 'La botella mide 28 cm de alto.'],
    ['nl', 'Ik ben 1,85 m lang.'],
    ['ja', '身長165cmです。'],
  ])('of something or somebody beside it (%s)', (language, text) => expect(sides(text, language)).toEqual([]));

  it('sides of the piece stay, whatever stands beside them', () => {
    expect(sides('Fits a folder, width 38 cm', 'en')).toEqual(['width 380']);
    expect(sides('30 x 21 x 17 cm with two handles', 'en')).toHaveLength(3);
    expect(sides('Handle drop 12 cm', 'en')).toEqual(['handle 120']);
    expect(sides('持ち手の長さ38cm', 'ja')).toEqual(['handle 380']);
  });
});

it('a word behind “by” is of the number ahead of it, and a Japanese label of the one behind', () => {
  expect(sides('14 inches wide by 9', 'en')).toEqual(['width 355.6', 'unknown 228.6']);
  expect(sides('36×28×10cm ストラップの長さ110cm', 'ja').at(-1)).toBe('strap 1100');
  expect(sides('36×28×10cm ストラップの長さ110cm', 'ja')).toContain('unknown 100');
});

it.each([
  ['7 and a half inches high', 'en', ['height 190.5']],
  ['7 and a quarter inches high', 'en', ['height 184.15']],
  ['28 e mezzo cm', 'it', ['unknown 285']],
  ['30 de ancho y 22 de alto', 'es', ['width 300', 'height 220']],
  ['1m62 de long', 'fr', ['width 1620']],
] as const)('%s', (text, language, said) => expect(sides(text, language)).toEqual(said));
