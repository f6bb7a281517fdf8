// @vitest-environment jsdom
import { render } from 'preact';
import { afterEach, expect, it } from 'vitest';
import { FoundPhotos } from '../../../src/ui/watchlist/SamePhotos';
import type { SamePhotoElsewhere } from '../../../src/watch';
import { chooseLanguage } from '../../../src/words';

afterEach(() => {
  render(null, document.body);
  chooseLanguage('en');
});

const picture = 'data:image/webp;base64,AAAA';
const found: SamePhotoElsewhere = {
  id: 'case-2',
  title: 'Carryall anew',
  own: { photo: 1, picture, readAt: '2026-03-04T10:00:00.000Z' },
  earlier: false,
  other: { photo: 4, picture, readAt: '2026-03-01T10:00:00.000Z' },
  mirrored: true,
  cut: false,
};

it('stands beside the one of the other case, which it leads to, with its ordinary reasons and no judgement', () => {
  render(<FoundPhotos found={[found]} />, document.body);
  const section = document.querySelector('.same-photos');
  expect(section?.querySelector('a')?.getAttribute('href')).toBe('#case=case-2');
  expect(section?.querySelectorAll('img')).toHaveLength(2);
  expect([...(section?.querySelectorAll('figcaption') ?? [])].map((one) => one.textContent)).toEqual([
    'Here: photo 1',
    'There: photo 4, read on 1 Mar 2026',
  ]);
  expect(section?.textContent).toContain('One is the mirror image of the other.');
  expect(section?.textContent).toContain('Ordinary reason: a seller may list a piece anew');
});

it('is said in German too, and nothing where there is none', () => {
  chooseLanguage('de');
  render(<FoundPhotos found={[{ ...found, earlier: true }]} />, document.body);
  expect(document.querySelector('figcaption')?.textContent).toBe('Hier: Foto 1, gelesen am 4. März 2026, seither fort');
  expect(document.body.textContent).toContain('Dasselbe Foto in anderen aufbewahrten Fällen');
  render(<FoundPhotos found={[]} />, document.body);
  expect(document.querySelector('.same-photos')).toBeNull();
});
