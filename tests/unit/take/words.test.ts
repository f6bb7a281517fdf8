import { describe, expect, it } from 'vitest';
import words from '../../../src/take/words.json';

const languages = ['de', 'en', 'es', 'fr', 'it', 'ja', 'nl'];

describe('words of pages that tell', () => {
  it('stand in each of the seven languages, for every topic', () => {
    const lacking = Object.entries(words).flatMap(([topic, lists]) => {
      const missing = languages.filter((language) => !((lists as Record<string, string[]>)[language]?.length ?? 0));
      return missing.map((language) => `${topic} in ${language}`);
    });
    expect(lacking).toEqual([]);
    for (const lists of Object.values(words)) expect(Object.keys(lists).sort()).toEqual(languages);
  });
});
