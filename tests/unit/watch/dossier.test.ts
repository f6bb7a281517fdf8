import { describe, expect, it } from 'vitest';
import type { Case } from '../../../src/case';
import type { Finding } from '../../../src/check/types';
import { dossierOf, type JudgedLook } from '../../../src/watch';
import { photoRead } from '../../photo-read';
import { withPhotos } from '../check/sample';
import { decoding, reading } from '../evidence/samples';
import { caseAt, sampleCase, sampleRecord } from './sample-case';

const judgedOf = (kase: Case, pictures: JudgedLook['pictures'] = []): JudgedLook => ({
  record: sampleRecord({ changedAt: '2026-03-02T09:00:00.000Z', status: 'asked', note: 'asked for the lining' }),
  case: kase,
  pictures,
});

const finding = (id: string, kind: Finding['kind'], evidence: string[] = []): Finding => ({
  id,
  check: id,
  kind,
  data: {
    written: { statement: `Statement of ${id}.`, basis: ['a rule'], innocent: 'an innocent way', settles: 'a photo' },
  },
  source: { kind: 'practice', text: 'common practice, no source' },
  evidence,
  photos: [],
  claims: [],
  asks: [],
});

const speaks = (one: Finding): Case['outcomes'][number] => ({ outcome: 'speaks', check: one.check, findings: [one] });

describe('the particulars of a dossier', () => {
  it('are those of the record: title, address, dates, status and note', () => {
    const dossier = dossierOf(judgedOf(sampleCase()));
    expect(dossier).toMatchObject({
      title: 'Ondrasse Carryall 30',
      address: 'https://attic-arcade.example/item/7',
      link: 'https://attic-arcade.example/item/7',
      readAt: '2026-03-01T10:00:00.000Z',
      judgedAt: '2026-03-01T10:00:00.000Z',
      savedAt: '2026-03-01T10:05:00.000Z',
      changedAt: '2026-03-02T09:00:00.000Z',
      lookedBefore: null,
      status: 'asked',
      note: 'asked for the lining',
    });
  });

  it.each(['javascript:alert(1)', 'data:text/html,<script>alert(1)</script>', 'file:///etc/passwd', ' https://x'])(
    'show the address %s as words, never as a link',
    (url) => {
      const dossier = dossierOf(judgedOf(caseAt(url)));
      expect(dossier.link).toBe(null);
      expect(dossier.address).toBe(url);
    },
  );
});

describe('findings', () => {
  const kase: Case = {
    ...sampleCase(),
    outcomes: [finding('agrees', 'agreement'), finding('missing', 'gap'), finding('against', 'contradiction')].map(
      speaks,
    ),
    questions: [
      {
        id: 'q1',
        wants: 'photo',
        asks: [{ ask: 'as-written', topic: 'q1', wants: 'photo', data: { words: 'Could you show the stamp?' } }],
        settles: ['missing', 'against'],
      },
      {
        id: 'q2',
        wants: 'fact',
        asks: [{ ask: 'as-written', topic: 'q2', wants: 'fact', data: { words: 'When was it bought?' } }],
        settles: [],
      },
    ],
  };
  const dossier = dossierOf(judgedOf(kase));

  it('stand by kind, contradictions first, numbered through the document', () => {
    const shown = dossier.findings.map((group) => [group.kind, group.findings.map((one) => one.number)]);
    expect(shown).toEqual([
      ['contradiction', [1]],
      ['gap', [2]],
      ['agreement', [3]],
    ]);
  });

  it('are named by number in the questions that settle them', () => {
    expect(dossier.questions.map(({ settles }) => settles)).toEqual([[1, 2], []]);
  });
});

describe('stamps', () => {
  const listing = { ...sampleCase().listing, photos: withPhotos(3).photos };
  const [first, second, third] = listing.photos.map(({ id }) => id) as [string, string, string];
  const from = (photoId: string, lineId: string) => ({ kind: 'photo' as const, photoId, lineId });
  const kase: Case = {
    ...sampleCase(),
    listing,
    decodings: [
      decoding('d1', { accepted: true, from: from(second, 'l1'), readings: [reading()] }),
      decoding('d2', { accepted: true, from: { kind: 'typed' }, readings: [reading()] }),
      decoding('d5', { accepted: true, from: { kind: 'claim', claimId: 'c1' }, readings: [reading()] }),
      decoding('d3', { accepted: false, from: from(third, 'l2'), readings: [] }),
      decoding('d4', { accepted: false, from: from(third, 'l3'), readings: [] }),
    ],
  };
  const picture = 'data:image/png;base64,AAAA';
  const dossier = dossierOf(
    judgedOf(kase, [
      { photoId: first, lineId: null, picture: 'data:image/png;base64,BBBB' },
      { photoId: second, lineId: 'l1', picture },
    ]),
  );

  it('of one code stand once, with every place and the pictures that were kept', () => {
    expect(dossier.read).toEqual([
      {
        decoding: kase.decodings[0],
        seenIn: [{ kind: 'photo', photo: 2 }, { kind: 'typed' }, { kind: 'listing' }],
        pictures: [{ photo: 2, picture }],
      },
    ]);
    expect(dossier.face).toBe('data:image/png;base64,BBBB');
  });

  it('that are not certain stand one by one, apart from what was read', () => {
    expect(dossier.unclear.map(({ decoding: { id }, seenIn }) => [id, seenIn])).toEqual([
      ['d3', [{ kind: 'photo', photo: 3 }]],
      ['d4', [{ kind: 'photo', photo: 3 }]],
    ]);
  });
});

describe('what was not looked at', () => {
  it('tells photos that failed, that were never opened, that were too weak and that were copies, checks that cannot tell and that failed', () => {
    const listing = { ...sampleCase().listing, photos: withPhotos(6).photos };
    const ids = listing.photos.map(({ id }) => id) as [string, string, string, string, string, string];
    const problem = { code: 'photo-lost', where: 'photo', what: 'the photo did not arrive', remedy: 'Try again.' };
    const weak = { width: 90, height: 60, tooWeak: true };
    const other = { code: 'list-cut', where: 'page', what: 'the description was cut', remedy: '' };
    const { notLookedAt } = dossierOf(
      judgedOf({
        ...sampleCase(),
        listing,
        photos: [
          { state: 'unread', photoId: ids[0], problem },
          photoRead(ids[1], weak),
          { state: 'unread', photoId: ids[3], problem },
          photoRead(ids[5], { ...weak, came: { way: 'capture', fullSize: false, part: false, largest: null } }),
        ],
        outcomes: [
          {
            outcome: 'cannot-tell',
            check: 'plant-against-origin',
            why: { reason: 'as-written', data: { words: 'no stamp was read' } },
          },
          { outcome: 'failed', check: 'parts-shown', why: 'it broke' },
        ],
        skipped: [{ ...problem, code: 'photos-not-read' }, other],
      }),
    );
    expect(notLookedAt).toEqual({
      unread: [{ photos: [1, 4], problem }],
      neverOpened: [3, 5],
      tooWeak: [2],
      // That the copy is weak says nothing of the photo.
      copied: [6],
      problems: [other],
      checks: [{ check: 'plant-against-origin', why: { reason: 'as-written', data: { words: 'no stamp was read' } } }],
      failed: [{ check: 'parts-shown', why: 'it broke' }],
    });
  });
});
