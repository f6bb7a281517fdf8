import { describe, expect, it } from 'vitest';
import { emptyDraft } from '../../../src/listing/draft';
import { sideBySide } from '../../../src/listing/visible/pairs';
import { readTags } from '../../../src/listing/visible/tags';

const read = (tags: string[], title = '', description = '') => {
  const draft = emptyDraft();
  const seen = { origin: 'visible' as const, where: 'ul', confidence: 0.65 };
  draft.title.push({ value: title, ...seen });
  draft.description.push({ value: description, ...seen });
  readTags([{ name: sideBySide, value: tags.join('\n'), ...seen }], draft);
  return [draft.maker, draft.colour, draft.condition].map(([best]) => best?.value ?? null);
};

describe('tags side by side', () => {
  it.each<[string[], string, (string | null)[]]>([
    [['Ondrasse', 'Black'], 'ondrasse pochette', ['Ondrasse', 'Black', null]],
    [['Velgrave', 'Noir', 'Très bon état'], 'Petit sac', ['Velgrave', 'Noir', 'used-very-good']],
    [['カワモリ', 'ブラック', '美品'], 'トートバッグ', ['カワモリ', 'ブラック', 'used-very-good']],
    [['Blau', 'Gut'], 'Tasche', [null, 'Blau', 'used']],
    [['Merle-Aubin', 'Rouge'], 'Pochette merle-aubin', ['Merle-Aubin', 'Rouge', null]],
    [['Olmstedt (Wien)', 'Blau'], 'Tasche von Olmstedt (Wien)', ['Olmstedt (Wien)', 'Blau', null]],
  ])('%j tell of the piece', (tags, title, wanted) => {
    expect(read(tags, title)).toEqual(wanted);
  });

  it.each<[string[], string]>([
    [['Brand', 'Ondrasse'], 'Ondrasse bag'],
    [['Black', 'Brown', 'Red'], 'Bag'],
    [['New', 'Very good', 'Worn'], 'Bag'],
    [['Innenfutter', 'Schwarz'], 'Tasche'],
    [['Velgrave', 'Morrick', 'Black', 'Good'], 'Bag'],
    [['Velgrave', 'Good'], 'Bag'],
    [['Ondrasse bag', '£20'], 'Ondrasse bag'],
  ])('%j say nothing', (tags, title) => {
    expect(read(tags, title)).toEqual([null, null, null]);
  });
});
