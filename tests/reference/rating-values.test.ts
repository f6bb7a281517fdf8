import { parseHTML } from 'linkedom';
import { expect, it } from 'vitest';
import { findRatings } from '../../src/text/rating';
import { describeWithFixture } from './fixture';

interface Case {
  html: string;
  parent_html: string;
  ratingValue: number;
  bestRating: number | null;
}

/** The text as a browser shows it: white space collapsed. */
const shown = (html: string) =>
  (parseHTML(`<html><body>${html}</body></html>`).document.body.textContent ?? '').replace(/\s+/g, ' ');

describeWithFixture<{ cases: Case[] }>('ratings of real pages', 'fixtures/rating-values.json', ({ cases }) => {
  it('reads the value of at least 95% of the elements', () => {
    const wrong = cases
      .map((item) => ({ item, got: findRatings(shown(item.html))[0]?.value ?? null }))
      .filter(({ item, got }) => got !== item.ratingValue)
      .map(({ item, got }) => `${shown(item.html)} → ${got}, not ${item.ratingValue}`);
    expect(wrong.length / cases.length, wrong.join('\n')).toBeLessThanOrEqual(0.05);
  });

  it('reads the scale of at least 85% of those whose element or parent states it in its text', () => {
    const scaled = cases.filter((item) => item.bestRating !== null);
    const wrong = scaled
      .map((item) => ({ item, found: [...findRatings(shown(item.html)), ...findRatings(shown(item.parent_html))] }))
      .map(({ item, found }) => ({ item, got: found.find((rating) => rating.best !== null)?.best ?? null }))
      .filter(({ item, got }) => got !== item.bestRating)
      .map(({ item, got }) => `${shown(item.parent_html)} → ${got}, not ${item.bestRating}`);
    expect(wrong.length / scaled.length, wrong.join('\n')).toBeLessThanOrEqual(0.15);
  });
});
