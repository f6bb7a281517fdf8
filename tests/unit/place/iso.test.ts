import { expect, test } from 'vitest';
import { countryExisted, currentPlaces, formerPlaces, placeName, placesAgree, presentPlaces } from '../../../src/place';
import { spanSchema } from '../../../src/span/types';

test('249 countries in force and 31 former ones', () => {
  expect(currentPlaces).toHaveLength(249);
  expect(formerPlaces).toHaveLength(31);
});

test('the days of every country are days, the first before the last', () => {
  const spans = [...currentPlaces, ...formerPlaces].map(countryExisted);
  expect(spans.filter((span) => !spanSchema.safeParse(span).success)).toEqual([]);
  expect(spans.filter(({ from, to }) => from !== null && to !== null && from > to)).toEqual([]);
});

test('names are said in English', () => {
  expect(placeName('FR')).toBe('France');
  expect(placeName('GB')).toBe('United Kingdom');
  expect(placeName('CSHH')).toBe('Czechoslovakia');
  expect(placeName('QZ')).toBe('QZ');
});

test('a former country stands for the ground of its heirs', () => {
  expect(presentPlaces('CSHH')).toEqual(['CZ', 'SK']);
  expect(presentPlaces('YUCS')).toEqual(['BA', 'HR', 'ME', 'MK', 'RS', 'SI']);
  expect(presentPlaces('DDDE')).toEqual(['DE']);
  expect(formerPlaces.filter((code) => presentPlaces(code).length === 0)).toEqual([]);
});

test('a former country agrees with its heirs, and present countries only with themselves', () => {
  expect(placesAgree('CSHH', 'SK')).toBe(true);
  expect(placesAgree('SI', 'YUCS')).toBe(true);
  expect(placesAgree('DDDE', 'DE')).toBe(true);
  expect(placesAgree('YUCS', 'CSXX')).toBe(true);
  expect(placesAgree('CZ', 'SK')).toBe(false);
  expect(placesAgree('FR', 'IT')).toBe(false);
  expect(placesAgree('QZ', 'QZ')).toBe(true);
  expect(placesAgree('QZ', 'FR')).toBe(false);
});

test('countries exist within their days', () => {
  expect(countryExisted('CSHH')).toEqual({ from: '1918-10-28', to: '1992-12-31', precision: 'range' });
  expect(countryExisted('SK').from).toBe('1993-01-01');
  expect(countryExisted('FR')).toEqual({ from: null, to: null, precision: 'range' });
  expect(countryExisted('DYBJ').to).toBe('1977-12-31');
});
