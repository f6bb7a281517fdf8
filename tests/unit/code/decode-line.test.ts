import { describe, expect, it } from 'vitest';
import { decodeLattice, decodeLine } from '../../../src/code';
import { builtInMakers } from '../../../src/maker';
import type { Lattice } from '../../../src/stamp';

const now = '2026-11-25';
const sharp = (text: string, doubts: Record<number, Record<string, number>> = {}): Lattice => ({
  steps: [...text].flatMap((character, at): Record<string, number>[] => [
    doubts[at] ?? { [character]: 0.999 },
    { '': 1 },
  ]),
});
const unknown = { makers: [], maker: null, now };
const ondrasse = { makers: builtInMakers, maker: 'Ondrasse', now };

describe('a line at the edge of its photo', () => {
  it('is never a whole code, and what it reads so far is kept', () => {
    const whole = decodeLine({ lattice: sharp('KV0915') }, ondrasse);
    expect([whole.accepted, whole.readings[0]?.text, whole.open]).toEqual([true, 'KV0915', undefined]);
    const cut = decodeLine({ lattice: sharp('KV0915'), mayGoOn: true }, ondrasse);
    expect([cut.accepted, cut.readings, cut.code]).toEqual([false, [], 'KV0915']);
    expect(cut.nearest[0]).toMatchObject({ text: 'KV0915', how: 'as-written' });
    expect(cut.open).toEqual([{ kind: 'may-go-on' }]);
  });
});

describe('a line that spells a code from both sides', () => {
  it('is the side that alone fits a system of the maker', () => {
    const fits = decodeLine({ lattice: sharp('XX0681'), otherWay: sharp('KV0915') }, ondrasse);
    expect([fits.accepted, fits.readings[0]?.text]).toEqual([true, 'KV0915']);
    const stays = decodeLine({ lattice: sharp('KV0915'), otherWay: sharp('XX0681') }, ondrasse);
    expect([stays.accepted, stays.readings[0]?.text]).toEqual([true, 'KV0915']);
  });

  it('is left open without one', () => {
    const open = decodeLine({ lattice: sharp('9061'), otherWay: sharp('1906') }, unknown);
    expect([open.accepted, open.readings]).toEqual([false, []]);
    expect(open.open).toEqual([{ kind: 'upside-down', text: '1906' }]);
  });
});

describe('a text that is surely seen and fits no family', () => {
  it.each([
    ['JQV-5526', 2],
    ['KPT0312', 1],
    ['MXR1299', 2],
  ])('%s is not taken for the code of a family that lacks one of its characters', (text, at) => {
    const lattice = sharp(text, { [at]: { [text[at]!]: 0.94, '': 0.06 } });
    const { accepted, code, readings } = decodeLattice(lattice, unknown);
    expect([accepted, code, readings]).toEqual([true, text, []]);
  });

  it('is settled by a family where it is not sure', () => {
    const doubtful = sharp('KPT0312', { 1: { P: 0.55, '': 0.45 } });
    expect(decodeLattice(doubtful, unknown).readings[0]?.text).toBe('KT0312');
  });

  it.each([
    ['31G5', 2, { G: 0.88, '0': 0.1 }],
    ['2C11', 1, { C: 0.86, '0': 0.12 }],
    ['07S4', 2, { S: 0.85, '0': 0.13 }],
  ])(
    '%s, whose letter is clearly likelier than a digit, is no code of digits because a date would fit',
    (text, at, seen) => {
      const { accepted, readings, nearest } = decodeLattice(sharp(text, { [at]: seen }), unknown);
      expect([accepted, readings]).toEqual([false, []]);
      expect(nearest.map((near) => near.text)).toContain(`${text.slice(0, at)}0${text.slice(at + 1)}`);
    },
  );

  it('is not read as digits with a lone letter taken for one, however rare such codes are', () => {
    const doubtful = sharp('1840G7275', { 4: { G: 0.7, '6': 0.29 } });
    expect(decodeLattice(doubtful, unknown)).toMatchObject({ accepted: false, readings: [] });
  });

  it('is settled by a system of the maker as before', () => {
    const doubtful = sharp('KVX0915', { 2: { X: 0.94, '': 0.06 } });
    expect(decodeLattice(doubtful, ondrasse).readings[0]?.text).toBe('KV0915');
  });
});

describe('a number that begins with 0 or 1, no maker named', () => {
  it.each(['013689', '133631', '1024', '0936'])('%s is read, though a family has a twin with a letter', (text) => {
    const { accepted, code, open } = decodeLattice(sharp(text, { 0: { [text[0]!]: 0.97, O: 0.02, I: 0.01 } }), unknown);
    expect([accepted, code, open]).toEqual([true, text, undefined]);
  });

  it('is read with the character left open where letter and digit are both likely', () => {
    const both = { 0: { '0': 0.35, O: 0.64 } };
    const { accepted, code, open } = decodeLattice(sharp('013689', both), unknown);
    expect([accepted, code.slice(1)]).toEqual([true, '13689']);
    expect(open).toEqual([{ kind: 'alike', place: 0, may: expect.arrayContaining(['0', 'O']) }]);
  });

  it.each([
    ['013689', 'D', '0'],
    ['133631', 'L', '1'],
    ['1336310', 'I', '1'],
  ])('%s is read with the first character left open where it may be %s', (text, letter, digit) => {
    const both = { 0: { [digit]: 0.2, [letter]: 0.79 } };
    const { accepted, code, open } = decodeLattice(sharp(text, both), unknown);
    expect([accepted, code.slice(1)]).toEqual([true, text.slice(1)]);
    expect(open).toEqual([{ kind: 'alike', place: 0, may: expect.arrayContaining([digit, letter]) }]);
  });

  it('may have up to twenty digits', () => {
    const long = '50123456789012345678';
    const { accepted, code } = decodeLattice(sharp(long), unknown);
    expect([accepted, code]).toEqual([true, long]);
  });

  it('is not read where another character altogether is as likely', () => {
    expect(decodeLattice(sharp('013689', { 2: { '3': 0.6, '8': 0.39 } }), unknown).accepted).toBe(false);
  });

  it('still is no code of a named maker whose sound code has the same shapes', () => {
    const { accepted } = decodeLattice(sharp('KVO915'), ondrasse);
    const { readings } = decodeLattice(sharp('KVO915'), ondrasse);
    expect(accepted).toBe(readings.length > 0);
  });
});

describe('a character that may be its twin', () => {
  const twin = { '1': 0.2, I: 0.8 };
  const open = (lattice: Lattice) => decodeLattice(lattice, unknown).open;

  it('is left open, whatever signs may stand between the characters', () => {
    expect(open(sharp('MXB 81-77', { 5: twin }))).toEqual([{ kind: 'alike', place: 5, may: ['1', 'I'] }]);
  });

  it('is not left open where its characters hardly look so, however usual the twin would be', () => {
    expect(open(sharp('45G1', { 3: { '1': 0.975, I: 0.025 } }))).toBeUndefined();
    expect(open(sharp('45G1', { 3: { '1': 0.92, I: 0.08 } }))).toEqual([{ kind: 'alike', place: 3, may: ['1', 'I'] }]);
  });

  it('is not a sign for another sign', () => {
    const signs = { ' ': 0.4, '-': 0.3, '.': 0.3 };
    expect(open(sharp('MXB 85-77', { 3: signs }))).toBeUndefined();
  });

  it('is left open where its likelihood is shared among ways to part the characters', () => {
    const signs = { ' ': 0.34, '-': 0.33, '.': 0.33 };
    const lattice = sharp('MXB 81-77', { 3: signs, 5: { '1': 0.3, I: 0.7 } });
    expect(open(lattice)).toEqual([{ kind: 'alike', place: 5, may: ['1', 'I'] }]);
  });
});
