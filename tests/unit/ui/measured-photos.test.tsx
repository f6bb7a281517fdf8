// @vitest-environment jsdom
import { render } from 'preact';
import { afterEach, expect, it } from 'vitest';
import { type Case, type Correction, photoMeant } from '../../../src/case';
import type { PhotoView } from '../../../src/message/protocol';
import { DossierMeasured } from '../../../src/ui/dossier/DossierMeasured';
import { pickPictures } from '../../../src/ui/panel/pick-pictures';
import { Corrections } from '../../../src/ui/parts/Corrections';
import { dossierOf } from '../../../src/watch';
import { chooseLanguage } from '../../../src/words';
import { counted, marked, rowOfStitches } from '../../hand-mark';
import { photoRead } from '../../photo-read';
import { listingOf } from '../case/sample-listing';
import { sampleCase, sampleRecord } from '../watch/sample-case';

const listing = listingOf('Ondrasse Carryall 30', 'Width 30 cm.', 3);
const photos = [photoRead('p1', { hash: '1111111111111111' }), photoRead('p2', { hash: 'f0e1d2c3b4a59687' })];
const byHand: Correction = {
  id: 'hand-1',
  ...marked(photoMeant(listing, 'p2', photos[1])!, rowOfStitches({ number: 2 }), [
    counted(11, 0.4),
    { what: 'pitch', value: 12.346, uncertainty: 0.31, unit: 'px', where: null },
    { what: 'lab', value: null, uncertainty: null, unit: null, where: null, why: 'no-white' },
    { what: 'difference', value: 3.21, uncertainty: 1.2, unit: 'de2000', where: null, against: 1 },
  ]),
};
const kase: Case = { ...sampleCase(), listing, photos, corrections: [byHand] };
const picture = 'data:image/webp;base64,AAAA';

afterEach(() => {
  chooseLanguage('en');
  document.body.replaceChildren();
});

it('a dossier draws the marks of a photo on its picture, each with its number, and tells what they measure', () => {
  const { measured } = dossierOf({
    record: sampleRecord(),
    case: kase,
    pictures: [{ photoId: 'p2', lineId: null, picture }],
  });
  expect(measured).toMatchObject([{ photo: 2, picture }]);
  render(<DossierMeasured measured={measured} />, document.body);
  expect(document.querySelector('.on-photo img')?.getAttribute('src')).toBe(picture);
  expect(document.querySelector('.on-photo polyline')?.getAttribute('points')).toBe('25,50 75,50');
  expect(document.querySelector('.on-photo .mark-number')?.textContent).toBe('2');
  expect(document.querySelector('.mark-sheet')?.textContent).toBe(
    '2 Row of stitches: tab' +
      'Stitches11 ± 0.40' +
      'Length of a stitch12.35 ± 0.31 px' +
      'Colour (CIELAB)not measured: no white on this photo, so colours are not told' +
      'Difference of colour (CIEDE2000), against mark 13.2 ± 1.2',
  );
});

it('a case without marks has no such part, and one whose picture was not kept tells the measures alone', () => {
  const judged = { record: sampleRecord(), pictures: [] };
  render(<DossierMeasured measured={dossierOf({ ...judged, case: sampleCase() }).measured} />, document.body);
  expect(document.body.textContent).toBe('');
  render(<DossierMeasured measured={dossierOf({ ...judged, case: kase }).measured} />, document.body);
  expect(document.querySelector('.on-photo')).toBeNull();
  expect(document.querySelector('[data-what=count] dd')?.textContent).toBe('11 ± 0.40');
});

it('what is kept with a case are the first photo and each that is marked, small', () => {
  const view = (photoId: string): PhotoView => ({
    read: photoRead(photoId),
    thumbnail: `${picture}${photoId}`,
    crops: [],
  });
  const views = Object.fromEntries(listing.photos.map(({ id }) => [id, view(id)]));
  expect(pickPictures(kase, views).map(({ photoId }) => photoId)).toEqual(['p1', 'p2']);
  expect(pickPictures({ ...kase, corrections: [] }, views).map(({ photoId }) => photoId)).toEqual(['p1']);
});

it('stands among what the buyer set, in the language of the screens', () => {
  render(<Corrections kase={kase} />, document.body);
  expect(document.querySelector('.corrections li')?.textContent?.trim()).toBe(
    'On photo 2, you marked 2 Row of stitches: tab.',
  );
  render(null, document.body);
  chooseLanguage('de');
  render(<Corrections kase={kase} />, document.body);
  expect(document.querySelector('.corrections li')?.textContent?.trim()).toBe(
    'Auf Foto 2 hast du markiert: 2 Stichreihe: tab.',
  );
});
