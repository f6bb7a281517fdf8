// @vitest-environment jsdom
import { render } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { buildCase, photoNotes, type SentPhoto } from '../../../src/case';
import { observed } from '../../../src/photo';
import { PhotoNotes } from '../../../src/ui/parts/PhotoNotes';
import { chooseLanguage } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { listingOf } from '../case/sample-listing';

const chat: SentPhoto = { id: `sent-${'a'.repeat(32)}`, from: 'seller-chat', on: '2026-02-27' };
type Told = Partial<Record<'taken-at' | 'camera' | 'margin' | Ground, string | number>>;
type Ground = 'ground-lightness' | 'ground-spread' | 'ground-noise';
const ground = (lightness: number, spread: number, noise: number): Record<Ground, number> => ({
  'ground-lightness': lightness,
  'ground-spread': spread,
  'ground-noise': noise,
});
const photo = (id: string, [width, height]: [number, number], told: Told = {}, came?: 'capture') => {
  const read = photoRead(id, { width, height });
  if (read.state !== 'read') return read;
  const seen = Object.entries(told).map(([what, value]) => observed(id, what, value));
  const way = came ? { came: { way: came, fullSize: false, part: false, largest: null } } : {};
  return { ...read, ...way, observations: [...read.observations, ...seen] };
};
const large: [number, number] = [1600, 1200];
const small: [number, number] = [800, 600];
const noted = (photos: ReturnType<typeof photo>[], sent: SentPhoto[] = []) =>
  buildCase({
    listing: listingOf('Ondrasse Carryall 30', 'Width 30 cm.', photos.length - sent.length),
    photos,
    sent,
    corrections: [],
    makers: [],
    now: '2026-03-01T10:00:00.000Z',
  });

afterEach(() => {
  render(null, document.body);
  chooseLanguage('en');
});

describe('what is noticed of how photos were made', () => {
  it('is nothing where all are alike, however they were turned', () => {
    expect(photoNotes(noted([photo('p1', large), photo('p2', [1200, 1600])]))).toBeNull();
    expect(photoNotes(noted([]))).toBeNull();
  });

  it('tells sizes apart, those of most photos first', () => {
    expect(photoNotes(noted([photo('p1', small), photo('p2', large), photo('p3', large)]))?.sizes).toEqual([
      { of: [1600, 1200], photos: ['p2', 'p3'] },
      { of: [800, 600], photos: ['p1'] },
    ]);
  });

  it('compares no stand-in, and no size of a photo that was sent', () => {
    expect(photoNotes(noted([photo('p1', large), photo('p2', small, {}, 'capture')]))).toBeNull();
    expect(photoNotes(noted([photo('p1', large), photo(chat.id, small)], [chat]))).toBeNull();
  });

  it('names margins only where others have none', () => {
    const edged = { margin: 0.2 };
    expect(photoNotes(noted([photo('p1', large, edged), photo('p2', large)]))?.margins).toEqual(['p1']);
    expect(photoNotes(noted([photo('p1', large, edged), photo('p2', large, edged)]))).toBeNull();
  });

  it.each([
    ['a white sheet of a home', [photo('p1', large, ground(240, 28, 0.6)), photo('p2', large, ground(120, 60, 2))]],
    [
      'a ground that is neither surely',
      [photo('p1', large, ground(250, 2, 0.1)), photo('p2', large, ground(235, 20, 0.4))],
    ],
    ['one ground for all', [photo('p1', large, ground(250, 2, 0.1)), photo('p2', large, ground(250, 3, 0.2))]],
    ['what was not measured', [photo('p1', large, ground(250, 2, 0.1)), photo('p2', large)]],
  ])('says nothing of the ground with %s', (_which, photos) => {
    expect(photoNotes(noted(photos))).toBeNull();
  });

  it('names photos on a catalogue’s ground only beside others in ordinary light', () => {
    const kase = noted([
      photo('p1', large, ground(250, 4, 0.5)),
      photo('p2', large, ground(120, 60, 2)),
      photo('p3', large, ground(235, 20, 0.4)),
    ]);
    expect(photoNotes(kase)?.evenGrounds).toEqual(['p1']);
    render(<PhotoNotes kase={kase} />, document.body);
    expect(document.querySelector('li')?.textContent).toMatch(/^Photo 1: an even, light ground, as in a catalogue/);
    expect(document.body.textContent).toContain('Ordinary reason: A phone or an app may have cut the piece out');
  });

  it('speaks against nothing: no finding comes of a file’s date, however old', () => {
    const old = noted([photo('p1', large, { 'taken-at': '2009-01-02T03:04:05', camera: 'Pellevoir P 30' })]);
    const plain = noted([photo('p1', large)]);
    expect(photoNotes(old)).not.toBeNull();
    expect(old.outcomes).toEqual(plain.outcomes);
  });

  it('is said with an ordinary reason, in either language', () => {
    const kase = noted([
      photo('p1', large, { 'taken-at': '2025-03-04T10:11:12', camera: 'Pellevoir P 30' }),
      photo('p2', small),
    ]);
    render(<PhotoNotes kase={kase} />, document.body);
    const said = [...document.querySelectorAll('li')].map(({ textContent }) => textContent);
    expect(said).toEqual([
      'Photo 1: 1,600 × 1,200 pixels.',
      'Photo 2: 800 × 600 pixels.',
      'Photo 1: taken on 4 March 2025, as the file says.',
      'Photo 1: taken with Pellevoir P 30, as the file says.',
    ]);
    expect(document.body.textContent).toContain('that it is missing says nothing');
    render(null, document.body);
    chooseLanguage('de');
    render(<PhotoNotes kase={kase} />, document.body);
    expect(document.body.textContent).toContain('laut Datei aufgenommen am 4. März 2025');
  });
});
