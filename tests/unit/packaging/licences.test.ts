import { describe, expect, it } from 'vitest';
import { thirdPartyTexts } from '../../../src/packaging';
import { changed } from '../../../src/packaging/packaged-files';

describe('the file of licences', () => {
  it('holds for each package its name, version, short name and whole text, each package once', () => {
    const texts = thirdPartyTexts(['zod', 'preact', 'zod']);
    expect(texts.match(/^zod \d+\.\d+\.\d+ \(MIT\)$/gm)).toHaveLength(1);
    expect(texts).toMatch(/^preact \d+\.\d+\.\d+ \(MIT\)$/m);
    expect(texts.match(/Permission is hereby granted/g)).toHaveLength(2);
  });

  it('holds what is compiled into a package', () => {
    expect(thirdPartyTexts(['tesseract.js-core'])).toContain('\nleptonica (BSD-2-Clause)\n');
  });

  it('is not made while a package has no text', () => {
    expect(() => thirdPartyTexts(['no-such-package'])).toThrow(
      'no-such-package is packaged, and no text of its licence was found',
    );
  });
});

describe('a word that is taken out of a ready-made file', () => {
  it('stops the build when it is no longer there', () => {
    expect(changed('from there, from there', [['there', 'here']], 'a.js')).toBe('from here, from here');
    expect(() => changed('from afar', [['there', 'here']], 'a.js')).toThrow('a.js no longer holds "there"');
  });
});
