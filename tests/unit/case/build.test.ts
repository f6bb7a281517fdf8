import { describe, expect, it } from 'vitest';
import {
  buildCase,
  type Case,
  type CaseInput,
  type Correction,
  caseSchema,
  correct,
  findingsOf,
  lookAt,
  typedCode,
} from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import type { PhotoRead } from '../../../src/photo/read-types';
import { inEnglish } from '../../said';
import { readPhoto, stampLine, unreadPhoto } from '../check/sample';
import { listingOf } from './sample-listing';

const now = '2026-01-15T10:00:00Z';
const text = 'Ondrasse Carryall 30 in brown leather, made in Belgium in 1995. Width 30 cm, height 21 cm, depth 17 cm.';

/** Six photos, the stamp in the third. */
const photosWith = (code: string | null, rest = {}): PhotoRead[] =>
  ['p1', 'p2', 'p3', 'p4', 'p5', 'p6'].map((id, index) =>
    readPhoto(id, {
      hash: (0x123456789abcdefn * BigInt(index + 3)).toString(16).padStart(16, '0').slice(-16),
      ...(id === 'p3' && code !== null ? { lines: [stampLine('p3', code, rest)] } : {}),
    }),
  );

const input = (rest: Partial<CaseInput> = {}): CaseInput => ({
  listing: listingOf('Ondrasse Carryall 30, made in Belgium, 1995', text),
  photos: photosWith('KV0915'),
  corrections: [],
  makers: builtInMakers,
  now,
  ...rest,
});
const typed = (...codes: string[]) => codes.reduce<Correction[]>((list, code) => correct(list, typedCode(code)), []);
const kinds = (built: Case, kind: string) =>
  findingsOf(built)
    .filter((finding) => finding.kind === kind)
    .map(inEnglish)
    .map(({ check, statement }) => `${check}: ${statement}`);

/** The first case of a process compiles every word table, which takes seconds on a busy machine. */
describe('buildCase', { timeout: 60_000 }, () => {
  it('finds a sound piece sound: no contradiction, no doubt, and says what agrees', () => {
    const built = buildCase(input());
    expect(built.maker).toBe('Ondrasse');
    expect(kinds(built, 'contradiction')).toEqual([]);
    expect(kinds(built, 'doubt')).toEqual([]);
    expect(kinds(built, 'agreement')).toContain(
      "code-against-claimed-date: The stamp in photo 3 reads KV0915: January 1995, Belgium, inside the listing's “1995”.",
    );
    expect(built.summary.agreements).toBe(kinds(built, 'agreement').length);
    expect(built.skipped).toEqual([]);
  });

  it('judges a listing whose photos come one by one as it does the whole anew', () => {
    const whole = input();
    for (let read = 0; read <= whole.photos.length; read++) {
      const sofar = { ...whole, photos: whole.photos.slice(0, read) };
      expect(buildCase(sofar), `after ${read} photos`).toEqual(buildCase(structuredClone(sofar)));
    }
    // The same photos under another year, another maker's rules, and other words.
    for (const rest of [{ now: '1994-01-15T10:00:00Z' }, { makers: [] }, { listing: listingOf('Bag', 'Old bag') }]) {
      const other = { ...whole, ...rest };
      expect(buildCase(other)).toEqual(buildCase(structuredClone(other)));
    }
  });

  it('contradicts a claimed year that the stamp rules out, and asks about it first', () => {
    const built = buildCase(input({ listing: listingOf('Ondrasse Carryall 30', `${text.replace('1995', '1987')}`) }));
    expect(kinds(built, 'contradiction')).toEqual([
      expect.stringMatching(
        /^code-against-claimed-date: The stamp in photo 3 reads KV0915: January 1995, Belgium\. The listing says “.*1987.*”/,
      ),
    ]);
    const first = findingsOf(built).find(({ kind }) => kind === 'contradiction');
    expect(built.questions[0]?.settles).toContain(first?.id);
  });

  it('is one JSON value that can be written, read back and recomputed', () => {
    const built = buildCase(input({ corrections: typed('KV0915') }));
    const back = caseSchema.parse(JSON.parse(JSON.stringify(built)));
    expect(back).toEqual(built);
    const { listing, photos, corrections, judgedAt } = back;
    expect(buildCase({ listing, photos, corrections, makers: builtInMakers, now: judgedAt ?? '' })).toEqual(built);
  });

  it('counts photos that were not read, and never takes them for fine', () => {
    const photos = photosWith('KV0915').slice(3);
    const built = buildCase(input({ photos: [...photos, unreadPhoto('p1')] }));
    expect(built.skipped.map(({ data }) => data)).toEqual([
      { unread: 3, of: 6, reasons: [{ code: 'photo-not-image' }, { code: 'photo-not-fetched' }] },
    ]);
    const outcome = built.outcomes.find(({ check }) => check === 'code-fits-maker');
    expect(outcome).toMatchObject({ outcome: 'cannot-tell' });
  });

  it('leaves the maker’s name and the country wording on the piece out of the codes', () => {
    const lines = [
      stampLine('p3', 'ONDRASSE', { id: 'a', stampScore: 0.95 }),
      stampLine('p3', 'MADE IN BELGIUM', { id: 'b', stampScore: 0.95 }),
      stampLine('p3', 'KV0915', { id: 'c', stampScore: 0.6 }),
    ];
    const photos = photosWith('KV0915').map((photo) => (photo.photoId === 'p3' ? readPhoto('p3', { lines }) : photo));
    expect(buildCase(input({ photos })).decodings.map(({ code, from }) => [code, from])).toEqual([
      ['KV0915', { kind: 'photo', photoId: 'p3', lineId: 'c' }],
    ]);
  });

  it('takes the same code in two photos for one, and two texts a character apart for one stamp read twice', () => {
    const second = (code: string) =>
      photosWith('KV0915').map((photo) =>
        photo.photoId === 'p5' ? readPhoto('p5', { lines: [stampLine('p5', code)] }) : photo,
      );
    expect(buildCase(input({ photos: second('KV0915') })).decodings).toHaveLength(1);
    const twice = buildCase(input({ photos: second('KV0918') })).decodings;
    expect(twice.filter(({ accepted }) => accepted)).toHaveLength(1);
  });

  it('reads typed codes and codes that the text quotes', () => {
    const listing = listingOf('Ondrasse Carryall 30', `${text} Date code KV0915 inside.`);
    const built = buildCase(input({ listing, photos: photosWith(null), corrections: typed('kv 0915') }));
    expect(built.decodings.map(({ from, readings }) => [from.kind, readings[0]?.text])).toEqual([
      ['typed', 'KV0915'],
      ['claim', 'KV0915'],
    ]);
  });

  it('goes on without a maker file and says so', () => {
    const listing = listingOf('Velmont Roost bag', 'Velmont bag, brown, 1995, well kept and often used. Width 30 cm.');
    const built = buildCase(input({ listing }));
    expect(built.maker).toBeNull();
    expect(built.skipped.map(({ code }) => code)).toEqual(['no-maker-file']);
    expect(built.outcomes.find(({ check }) => check === 'code-fits-maker')).toEqual({
      outcome: 'cannot-tell',
      check: 'code-fits-maker',
      why: { reason: 'no-maker-file', data: {} },
    });
  });

  it('survives a typed code of 10,000 characters and an empty one', () => {
    const built = buildCase(input({ corrections: typed('K'.repeat(10_000), '') }));
    expect(kinds(built, 'contradiction')).toEqual([]);
    for (const { statement } of findingsOf(built).map(inEnglish)) expect(statement.length).toBeLessThan(600);
  });

  it('tells what changed since the look before', () => {
    const before = buildCase(input({ listing: listingOf('Ondrasse Carryall 30', text.replace('1995', '1987')) }));
    const built = buildCase(input({ previous: lookAt(before) }));
    expect(kinds(built, 'doubt')).toEqual([
      expect.stringMatching(/^claims-changed: On 15 January 2026 the listing gave the date/),
    ]);
    expect(built.previous?.claims).toEqual(before.claims);
  });
});
