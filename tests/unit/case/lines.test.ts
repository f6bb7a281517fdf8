import { describe, expect, it } from 'vitest';
import { changesBetween, countsAsCode, mayBeCode } from '../../../src/case/lines';
import { decoded, kv0915, misfit, stampLine } from '../check/sample';

const names = ['Ondrasse', 'ondrasse bruxelles', 'Calderwick & Rook', 'Tessaro Vell'];
const line = (text: string, stampScore = 0.9) => stampLine('p1', text, { stampScore });

describe('mayBeCode', () => {
  it.each(['KV0915', '834', '8503', '(A)1B220', 'M3-214/98', '14C50M37', 'B1042173', ''])(
    'takes %j for a code',
    (text) => {
      expect(mayBeCode(line(text), names)).toBe(true);
    },
  );
  it.each([
    'ONDRASSE',
    '0NDRASSE',
    'ONDRASSE BRUXELLES',
    'MADE IN BELGIUM',
    'CALDERWICK & ROOK',
    'BELGIUM',
    'FINE LEATHER GOODS',
  ])('leaves %j out', (text) => {
    expect(mayBeCode(line(text), names)).toBe(false);
  });
});

describe('countsAsCode', () => {
  const unclear = { ...decoded('KVQ922', []), accepted: false };
  it('keeps whatever reads under a system', () => {
    expect(countsAsCode(line('KV0915', 0.1), kv0915)).toBe(true);
  });
  it('keeps an unclear line from a middling score on, and only with a figure in it', () => {
    expect(countsAsCode(line('KVQ922', 0.45), unclear)).toBe(true);
    expect(countsAsCode(line('KVQ922', 0.2), unclear)).toBe(false);
    expect(countsAsCode(line('LEATHER', 0.9), unclear)).toBe(false);
  });
  it('keeps an impossible value, and other words only when they surely look like a stamp', () => {
    expect(countsAsCode(line('KV1995', 0.5), decoded('KV1995', [], { misfits: [misfit('KV1995')] }))).toBe(true);
    expect(countsAsCode(line('QX77', 0.9), decoded('QX77', []))).toBe(true);
    expect(countsAsCode(line('QX77', 0.5), decoded('QX77', []))).toBe(false);
    expect(countsAsCode(line('LEATHER', 0.9), decoded('LEATHER', []))).toBe(false);
  });
});

describe('changesBetween', () => {
  it('counts characters changed, added and left out', () => {
    expect(changesBetween('KV0915', 'KV0915')).toBe(0);
    expect(changesBetween('KV0915', 'KV0918')).toBe(1);
    expect(changesBetween('KV0915', 'KV915')).toBe(1);
    expect(changesBetween('', 'KV')).toBe(2);
  });
});
