import { describe, expect, it } from 'vitest';
import {
  buildCase,
  type Correction,
  caseSchema,
  correct,
  marksOnPhoto,
  type NewCorrection,
  photoMeant,
  undo,
} from '../../../src/case';
import type { HandMark, HandMeasure } from '../../../src/photo';
import { counted, marked, rowOfStitches } from '../../hand-mark';
import { photoRead } from '../../photo-read';
import { listingOf } from './sample-listing';

const now = '2026-01-15T10:00:00Z';
const listing = listingOf('Ondrasse Carryall 30', 'Ondrasse Carryall 30. Width 30 cm.', 2);
const photos = [photoRead('p1', { hash: '1111111111111111' }), photoRead('p2', { hash: 'f0e1d2c3b4a59687' })];
const build = (corrections: Correction[], over = {}) =>
  buildCase({ listing, photos, corrections, makers: [], now, ...over });
const row = rowOfStitches();
const count = counted(11, 0.5);
const markedOn = (mark: HandMark, measured: HandMeasure[] = [count], photo = 'p2'): NewCorrection =>
  marked(
    photoMeant(
      listing,
      photo,
      photos.find(({ photoId }) => photoId === photo),
    )!,
    mark,
    measured,
  );

describe('marks on photos', () => {
  it('tell the case what was measured, with their number and what they lie on; what was not measured is none of it', () => {
    const unmeasured: HandMeasure = {
      what: 'pitch',
      value: null,
      uncertainty: null,
      unit: null,
      where: null,
      why: 'no-stitches',
    };
    const kase = build(correct([], markedOn(row, [count, unmeasured])));
    expect(kase.observations).toEqual([
      {
        id: 'p2-mark-1-count',
        photoId: 'p2',
        mark: 1,
        on: 'tab',
        what: 'count',
        value: 11,
        uncertainty: 0.5,
        unit: 'stitch',
        where: null,
        by: 'hand',
      },
    ]);
    expect(caseSchema.parse(JSON.parse(JSON.stringify(kase)))).toEqual(kase);
  });

  it('change no finding, no evidence and no question: only a maker’s file could judge them', () => {
    const { observations: _, corrections: __, ...with_ } = build(correct([], markedOn(row)));
    const { corrections: ___, ...without } = build([]);
    expect(with_).toEqual(without);
  });

  it('one that is moved replaces itself; another number, and the same on another photo, stand beside it', () => {
    const list = [
      markedOn(row),
      markedOn({ ...row, number: 2 }),
      markedOn(row, [count], 'p1'),
      markedOn({ ...row, name: 'handle' }, [{ ...count, value: 12 }]),
    ].reduce<Correction[]>(correct, []);
    const kase = build(list);
    expect(marksOnPhoto(kase, 'p2').map(({ mark }) => [mark.number, mark.name])).toEqual([
      [1, 'handle'],
      [2, 'tab'],
    ]);
    expect(marksOnPhoto(kase, 'p1')).toHaveLength(1);
    expect(kase.observations?.map(({ photoId, value }) => [photoId, value])).toEqual([
      ['p1', 11],
      ['p2', 12],
      ['p2', 11],
    ]);
  });

  it('are undone', () => {
    const list = correct([], markedOn(row));
    expect(build(undo(list, list[0]!.id)).observations).toBeUndefined();
  });

  it('are found again on the same photo under another address, and kept and told of when it is gone', () => {
    const list = correct([], markedOn(row));
    const renamed = {
      ...listing,
      photos: listing.photos.map((link, at) => ({ ...link, id: `q${at + 1}`, url: `${link.url}?again` })),
    };
    const reread = [photoRead('q1', { hash: '1111111111111111' }), photoRead('q2', { hash: 'f0e1d2c3b4a59687' })];
    expect(build(list, { listing: renamed, photos: reread }).observations).toMatchObject([
      { photoId: 'q2', value: 11 },
    ]);
    const others = [photoRead('q1', { hash: '1111111111111111' }), photoRead('q2', { hash: '00ff00ff00ff00ff' })];
    const gone = build(list, { listing: renamed, photos: others });
    expect(gone.observations).toBeUndefined();
    expect(gone.corrections).toEqual(list);
    expect(gone.skipped).toContainEqual(expect.objectContaining({ code: 'correction-photo-gone', where: list[0]!.id }));
  });
});
