import { describe, expect, it } from 'vitest';
import { packagingOnly } from '../../../src/check/packaging-only';
import { factsSaying, said } from './sample';

describe('packaging-only', () => {
  it.each([
    ['Ondrasse Carryall 30, empty box', 'doubt: The listing says “empty box”.'],
    ['Nur Staubbeutel', 'doubt: The listing says “Nur Staubbeutel”.'],
    ['Angeboten wird nur die leere Box', 'doubt: The listing says “nur die leere Box”.'],
    ['Vendo solo la scatola vuota', 'doubt: The listing says “solo la scatola vuota”.'],
    ['空箱', 'doubt: The listing says “空箱”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(packagingOnly, factsSaying(words))).toEqual([statement]);
  });
  it.each([
    'Comes with box and dust bag',
    'No box',
    'The box is empty of scratches',
    'Es fehlt nur der leere Karton',
    'Alleen de doos is beschadigd',
  ])('is silent on %j', (words) => {
    expect(said(packagingOnly, factsSaying(words))).toEqual(['silent']);
  });
});
