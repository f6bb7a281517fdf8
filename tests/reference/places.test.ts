import { describe, expect, test } from 'vitest';
import { countryPeriod, currentPlaces, formerPlaces, isPlaceCode, placesAgree, presentPlaces } from '../../src/place';
import { findPlaces } from '../../src/text';
import { readFixture } from './fixture';

interface Iso {
  count: number;
  current: [string, string, string, string][];
  former: { alpha4: string; from: [string, string, string | null, string]; to: string[] }[];
  withdrawal_dates: Record<string, string>;
}
const iso = readFixture<Iso>('reference/iso_3166.json');

describe.skipIf(!iso)('countries (reference/iso_3166.json; skipped: not present)', () => {
  test('the codes in force and the former ones are those of ISO 3166', () => {
    expect(currentPlaces).toEqual(iso!.current.map(([code]) => code));
    expect(currentPlaces).toHaveLength(iso!.count);
    expect(formerPlaces).toEqual(iso!.former.map(({ alpha4 }) => alpha4));
  });

  test('every former country agrees with each of its heirs', () => {
    for (const { alpha4, to } of iso!.former) {
      const heirs = to.map((code) => (code === 'CS' ? 'CSXX' : code));
      expect(heirs.filter((heir) => !placesAgree(alpha4, heir))).toEqual([]);
    }
  });

  test('no former country existed after its code was withdrawn', () => {
    for (const { alpha4, from } of iso!.former) {
      const withdrawn = iso!.withdrawal_dates[from[1]];
      const { to } = countryPeriod(alpha4).span;
      if (withdrawn && alpha4 !== 'YUCS') expect(to !== null && to.slice(0, withdrawn.length) <= withdrawn).toBe(true);
    }
  });

  test('"Made in" with the name that ISO gives is found for every country whose name is one phrase', () => {
    const named = iso!.current.filter(([, , , name]) => !/[,()]/.test(name));
    const missed = named.filter(([code, , , name]) => {
      const place = findPlaces(`Made in ${name}`).find(({ form }) => form === 'made-in')?.place;
      return place !== code;
    });
    expect(missed.map(([code]) => code)).toEqual([]);
  });
});

test('no code is both in force and former, and only codes are codes', () => {
  expect(formerPlaces.filter((code) => currentPlaces.includes(code))).toEqual([]);
  expect(['FR', 'CSHH', 'XX', 'fr', ''].map(isPlaceCode)).toEqual([true, true, false, false, false]);
  expect(presentPlaces('XX')).toEqual([]);
});
