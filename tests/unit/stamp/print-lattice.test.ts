import { describe, expect, it } from 'vitest';
import { freeTexts, type PrintSymbol } from '../../../src/stamp';
import { hocrChoices } from '../../../src/stamp/print/hocr';
import { latticeFromSymbols, stampCharacter } from '../../../src/stamp/print/to-lattice';

const box = { x0: 0, y0: 0, x1: 1, y1: 1 };
const symbol = (...choices: [string, number][]): PrintSymbol => ({
  choices: choices.map(([text, share]) => ({ text, share })),
  box,
});

describe('characters of a general engine as a lattice', () => {
  it('keeps doubled characters two', () => {
    const lattice = latticeFromSymbols([symbol(['1', 1]), symbol(['1', 1])], 1);
    expect(lattice.steps).toHaveLength(3);
    expect(freeTexts(lattice)[0]?.text).toBe('11');
  });

  it('gives every character its doubles, so that a code system can settle O or 0', () => {
    const [step] = latticeFromSymbols([symbol(['O', 0.9], ['0', 0.1])], 0.8).steps;
    expect(step?.O).toBeGreaterThan(0.6);
    expect(step?.['0']).toBeGreaterThan(0.1);
    expect(step?.D).toBeGreaterThan(0);
  });

  it('never gives a step more than one in all', () => {
    for (const certainty of [0, 0.3, 0.9, 1]) {
      for (const character of 'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789') {
        const [step] = latticeFromSymbols([symbol([character, 0.97], ['?', 0.03])], certainty).steps;
        const sum = Object.values(step ?? {}).reduce((total, share) => total + share, 0);
        expect(sum).toBeLessThanOrEqual(1 + 1e-9);
      }
    }
  });

  it('leaves out signs that no stamp holds and reads small letters as capitals', () => {
    expect(stampCharacter('k')).toBe('K');
    expect(stampCharacter('|')).toBe('I');
    expect(stampCharacter('~')).toBeNull();
    expect(freeTexts(latticeFromSymbols([symbol(['~', 1]), symbol(['k', 1])], 1))[0]?.text).toBe('K');
  });
});

describe('alternatives in hOCR', () => {
  it('are read word by word and character by character, signs written out', () => {
    const hocr = `<span class='ocrx_word' id='word_1_1' title='bbox 0 0 9 9; x_wconf 81'>0&amp;
      <span class='ocrx_cinfo' id='lstm_choices_1_1_1'>
       <span class='ocrx_cinfo' id='choice_1_1_1' title='x_confs 90.5'>0</span>
       <span class='ocrx_cinfo' id='choice_1_1_2' title='x_confs 31'>O</span></span>
      <span class='ocrx_cinfo' id='lstm_choices_1_1_2'>
       <span class='ocrx_cinfo' id='choice_1_1_3' title='x_confs 77'>&amp;</span>
       <span class='ocrx_cinfo' id='choice_1_1_4' title='x_confs 2'>&#39;</span></span>
     </span><span class='ocrx_word' id='word_1_2' title='bbox 0 0 9 9; x_wconf 10'>x</span>`;
    expect(hocrChoices(hocr)).toEqual([
      [
        [
          { text: '0', confidence: 90.5 },
          { text: 'O', confidence: 31 },
        ],
        [
          { text: '&', confidence: 77 },
          { text: "'", confidence: 2 },
        ],
      ],
      [],
    ]);
  });
});
