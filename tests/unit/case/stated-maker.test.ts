import { describe, expect, it } from 'vitest';
import {
  answerOf,
  buildCase,
  correct,
  fileFromCase,
  findingsOf,
  makerByHand,
  makerGuessed,
  makerNamed,
} from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { inEnglish, problemInEnglish } from '../../said';
import { readPhoto, stampLine, stated } from '../check/sample';
import { listingOf } from './sample-listing';

const now = '2026-01-15T10:00:00Z';
const text =
  'Brown leather, silver hardware, red lining, made in Italy in 1987. Width 30 cm, height 21 cm, depth 17 cm.';
const photos = [readPhoto('p1'), readPhoto('p2', { lines: [stampLine('p2', 'KV0915')] })];
const build = (title: string, description: string, maker?: string) =>
  buildCase({
    listing: listingOf(title, description, 2, maker === undefined ? {} : { maker: stated(maker) }),
    photos,
    corrections: [],
    makers: builtInMakers,
    now,
  });

describe('a stated maker without a file', { timeout: 60_000 }, () => {
  it.each([
    'My Ondrasse wallet fits inside.',
    'Tags: Ondrasse, Calderwick & Rook, Tessaro Vell, leather',
    'Like an Ondrasse.',
    'Not Ondrasse.',
    'Goes well with an Ondrasse Carryall 30.',
    'vintage, brown, ondrasse, leather, tote, city',
  ])('is judged by no other maker’s file: %s', (mention) => {
    const built = build('Velmont Roost bag, 1987', `${text} ${mention}`, 'Velmont');
    expect(built.maker).toBeNull();
    expect(built.makerInvented).toBeUndefined();
    expect(findingsOf(built).filter(({ kind }) => kind === 'contradiction')).toEqual([]);
    expect(built.decodings.flatMap(({ readings }) => readings.map(({ system }) => system.maker))).toEqual(
      expect.not.arrayContaining(['Ondrasse', 'Calderwick & Rook', 'Tessaro Vell']),
    );
    expect(built.skipped.map((problem) => problemInEnglish(problem).what)).toContain('no maker file fits “Velmont”');
    expect(JSON.stringify(built.questions)).not.toContain('who made it');
  });

  it('is named by nobody’s question when only the title names it', () => {
    const built = build('Velmont Roost bag, 1987', text);
    expect(JSON.stringify(findingsOf(built).map(inEnglish))).not.toContain('names no maker');
    expect(JSON.stringify(built.questions)).not.toContain('who made it');
    expect(built.skipped.map((problem) => problemInEnglish(problem).what)).toContain(
      'no maker on file is named; it may be “Velmont”',
    );
  });

  it.each([
    ['Velmont Roost bag, 1987', undefined, 'Velmont'],
    ['Velmont Roost bag, 1987', 'Velmont', null],
    ['brown roost bag, 1987', undefined, null],
  ])('is guessed of “%s” with the field %s: %s', (title, maker, guess) => {
    expect(makerGuessed(build(title, text, maker))).toBe(guess);
  });

  it.each([
    ['Bolso Casa Ubierna de piel, color miel', 'Casa Ubierna'],
    ['Schultertasche Fa. Brinkhuis, Rindsleder dunkelbraun', 'Brinkhuis'],
    ['Borsa Pellegrini & Osti vintage anni 70', 'Pellegrini & Osti'],
    ['Brown leather briefcase by Harrow Tine', 'Harrow Tine'],
  ])('is guessed too where the title says it plainly: %s', (title, guess) => {
    const built = build(title, text);
    expect(built.claims.filter(({ kind }) => kind === 'maker')).toHaveLength(1);
    expect(makerNamed(built)).toBe('');
    expect(makerGuessed(built)).toBe(guess);
  });

  it('has the conflict of its code and its year told softly, with what the shape of a code is worth', () => {
    const built = build('Velmont Roost bag, 1987', text, 'Velmont');
    const told = findingsOf(built)
      .map(inEnglish)
      .filter(({ check }) => check === 'evidence-agrees');
    expect(told.map(({ kind, statement }) => [kind, statement])).toEqual([
      ['gap', expect.stringMatching(/does not fit: .*1987.*KV0915, by its shape alone: /)],
    ]);
    expect(told[0]?.innocent).toMatch(/^This maker may write its codes in another way/);
    const conflicts = built.reasoning?.conflicts ?? [];
    expect(conflicts.length).toBeGreaterThan(0);
  });
});

describe('a maker that the buyer names', { timeout: 60_000 }, () => {
  const named = (maker: string, said?: string) =>
    buildCase({
      listing: listingOf('A brown bag, 1995', text, 2, said === undefined ? {} : { maker: stated(said) }),
      photos,
      corrections: correct([], makerByHand(maker)),
      makers: builtInMakers,
      now,
    });

  it('has the say, whatever the page names', () => {
    for (const built of [named('Ondrasse'), named('Ondrasse', 'Velmont')]) {
      expect(built.maker).toBe('Ondrasse');
      expect(answerOf(built).stamp).toMatchObject({ kind: 'reads', code: 'KV0915' });
    }
  });

  it('without a file is the one that a file is begun for', () => {
    const built = named('Velmar Lane');
    expect([built.maker, makerNamed(built)]).toEqual([null, 'Velmar Lane']);
    expect(fileFromCase(built, '')?.value.maker).toBe('Velmar Lane');
  });
});
