import { describe, expect, it } from 'vitest';
import { freeTexts } from '../../../src/stamp/free-text';
import { isPartedBySigns, withoutOuterSigns, withoutSigns } from '../../../src/stamp/sign';
import { speltBy } from '../../../src/stamp/spelt';
import type { Lattice } from '../../../src/stamp/types';

const spelling = (text: string): Lattice => ({
  steps: [...text].flatMap((character) => [{ [character]: 1 }, { '': 1 }]),
});
const textOf = (lattice: Lattice): string | undefined => freeTexts(withoutOuterSigns(lattice))[0]?.text;

describe('marks that are no characters', () => {
  it('are no part of a code that they stand around', () => {
    expect(textOf(spelling('*AB1234**'))).toBe('AB1234');
    expect(textOf(spelling('* *AB 1234'))).toBe('AB 1234');
  });

  it('spell nothing where they stand alone', () => {
    expect(freeTexts(withoutOuterSigns(spelling('**')))).toEqual([{ text: '', probability: 1 }]);
  });

  it('leave what a step says beside them: a mark that may be a 4 is none as likely as it is a sign', () => {
    const lattice = { steps: [{ '*': 0.6, '4': 0.4 }, { '': 1 }, ...spelling('712').steps] };
    const texts = freeTexts(withoutOuterSigns(lattice));
    expect(texts).toEqual([
      { text: '712', probability: expect.closeTo(0.6, 9) },
      { text: '4712', probability: expect.closeTo(0.4, 9) },
    ]);
  });

  it('leave a first character that may be a sign as likely as it was', () => {
    const lattice = { steps: [{ '*': 0.3, '4': 0.7 }, { '': 1 }, ...spelling('712').steps] };
    expect(freeTexts(withoutOuterSigns(lattice)).map(({ text }) => text)).toEqual(['4712', '712']);
  });

  it('are a gap between characters, and part the line', () => {
    const lattice = withoutOuterSigns(spelling('12*0534'));
    const spelt = speltBy(lattice);
    expect(spelt.free.text).toBe('12 0534');
    expect(isPartedBySigns(spelt)).toBe(true);
    const whole = withoutOuterSigns(spelling('*12 0534*'));
    expect(isPartedBySigns(speltBy(whole))).toBe(false);
  });

  it('part a line from a fifth on', () => {
    const [hours, minutes] = ['19', '06'].map((text) => spelling(text).steps);
    const parted = (share: number) => {
      const lattice = { steps: [...hours!, { '': 1 }, { '.': 1 - share, '*': share }, { '': 1 }, ...minutes!] };
      return isPartedBySigns(speltBy(lattice));
    };
    expect(parted(0.25)).toBe(true);
    expect(parted(0.15)).toBe(false);
  });

  it('part no words: those are told as they are', () => {
    const lattice = withoutOuterSigns(spelling('SHOE*SHOP'));
    const spelt = speltBy(lattice);
    expect(spelt.free.text).toBe('SHOE SHOP');
    expect(isPartedBySigns(spelt)).toBe(false);
  });

  it('leave a lattice without any as it is', () => {
    const lattice = spelling('AB1234');
    expect(withoutOuterSigns(lattice)).toBe(lattice);
    expect(withoutSigns('AB 1234')).toBe('AB 1234');
  });
});
