import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('the material of the piece, and of its fittings', () => {
  it.each<Told>([
    ['Brown bridle leather with brass fittings.', ['body = brown bridle leather', 'hardware = brass']],
    ['Bridle leather, canvas.', ['body = bridle leather']],
    ['Bridle leather. Canvas.', ['body = bridle leather', 'body = canvas']],
    ['All brass.', ['hardware = brass']],
    ['Olive twill, brass, black handles.', ['hardware = brass', 'handle = black']],
    ['Olive twill, brass on the bag.', []],
    ['My sister’s has pigskin, this one suede.', []],
  ])('%s', (text, claims, title) =>
    expect(
      told(
        ['body', 'dust-bag', 'lining', 'hardware', 'strap', 'handle', 'leather', 'not leather', 'trim'],
        text,
        title,
        'en',
      ),
    ).toEqual(claims),
  );
});

const kinds = (short: string, text: string) => told([short], text);

describe('a lining that the question names', () => {
  it.each(['Is there a lining? Yes, suede.', 'Hat sie ein Futter? Ja, Wildleder.'])('%s', (text) => {
    expect(kinds('body', text)).toEqual([]);
  });
  it.each(['Is there a strap? Yes. Suede.', 'Suede.'])('and no other: %s', (text) => {
    expect(kinds('body', text)).toEqual(['body = suede']);
  });
});

it('the piece may be named right behind its material', () => {
  expect(told(['body'], 'とても 軽い レザーバッグ 通勤 に 最適', '', 'ja')).toEqual(['body = leather']);
});
