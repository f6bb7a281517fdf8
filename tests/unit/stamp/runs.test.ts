import { describe, expect, it } from 'vitest';
import { weighRuns } from '../../../src/stamp';

const likeliest = (...texts: [string, number][]) =>
  weighRuns(texts.map(([text, probability]) => ({ text, probability })))[0]!.text;

describe('texts of a line, weighed by their runs of letters and digits', () => {
  it('reads an O between digits as a 0 unless it looks much more like an O', () => {
    expect(likeliest(['245O5D', 0.9], ['24505D', 0.05])).toBe('24505D');
    expect(likeliest(['245O5D', 0.99], ['24505D', 0.005])).toBe('245O5D');
  });

  it('reads an O or I that ends three or more letters as a digit unless it looks much more like a letter', () => {
    expect(likeliest(['SBO142', 0.8], ['SB0142', 0.2])).toBe('SB0142');
    expect(likeliest(['SBO142', 0.95], ['SB0142', 0.05])).toBe('SBO142');
    expect(likeliest(['FHOO24', 0.7], ['FHO024', 0.2], ['FH0024', 0.1])).toBe('FH0024');
    expect(likeliest(['STUDIO', 0.6], ['STUD10', 0.4])).toBe('STUDIO');
  });

  it('reads a Q that ends three or more letters, or stands alone after digits, as a 0 unless it is clear', () => {
    expect(likeliest(['SBQ916', 0.65], ['SB0916', 0.35])).toBe('SB0916');
    expect(likeliest(['687012Q', 0.8], ['6870120', 0.17])).toBe('6870120');
    expect(likeliest(['687012Q', 0.995], ['6870120', 0.005])).toBe('687012Q');
    expect(likeliest(['8503AQ', 0.5], ['8503A0', 0.5])).toBe('8503AQ');
    expect(likeliest(['Q-4305', 0.5], ['0-4305', 0.49])).toBe('Q-4305');
  });

  it('leaves to the eye what ends one letter or two', () => {
    expect(likeliest(['RO3177', 0.6], ['R03177', 0.4])).toBe('RO3177');
    expect(likeliest(['RO3177', 0.4], ['R03177', 0.6])).toBe('R03177');
  });

  it('reads the digit of a lookalike where letters and digits come as they like', () => {
    expect(likeliest(['KTIB3C50RB717773', 0.4], ['KT1B3C50RB717773', 0.1])).toBe('KT1B3C50RB717773');
    expect(likeliest(['G71HD132BI', 0.4], ['G71HD132B1', 0.2])).toBe('G71HD132B1');
    expect(likeliest(['G71HD132BI', 0.98], ['G71HD132B1', 0.001])).toBe('G71HD132BI');
  });

  it('does not count a change at a separator', () => {
    expect(likeliest(['C1-037', 0.5], ['CI-037', 0.49])).toBe('CI-037');
    expect(likeliest(['AB-037', 0.5], ['AB-O37', 0.6])).toBe('AB-037');
  });

  it('keeps the sum of the probabilities, and nothing stays nothing', () => {
    const weighed = weighRuns([
      { text: '8QO7', probability: 0.5 },
      { text: '8007', probability: 0.2 },
    ]);
    expect(weighed.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(0.7, 12);
    expect(weighRuns([])).toEqual([]);
    expect(weighRuns([{ text: 'A', probability: 0 }])).toEqual([{ text: 'A', probability: 0 }]);
  });
});
