import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { currentPlaces, placeName } from '../../../src/place';
import { formerPlaces as formerCodes } from '../../../src/place/iso';
import { monthSpan, type Span, sinceSpan, spanWords, yearSpan, yearsSpan } from '../../../src/span';
import { kitFor } from '../../../src/words/kit';
import { languageFor } from '../../../src/words/language';
import { pseudo } from '../../../src/words/pseudo';

const [en, de] = [kitFor('en'), kitFor('de')];

test('English spans are said as the core says them, whatever the ends', () => {
  const day = fc
    .date({ min: new Date('1000-01-01'), max: new Date('9998-12-31'), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 10));
  const precision = fc.constantFrom('day', 'week', 'month', 'quarter', 'season', 'year', 'decade', 'range' as const);
  const span = fc.tuple(fc.option(day), fc.option(day), precision, fc.boolean()).map(([a, b, of, about]): Span => {
    const [from, to] = a !== null && b !== null && a > b ? [b, a] : [a, b];
    return { from, to, precision: of as Span['precision'], ...(about ? { about } : {}) };
  });
  fc.assert(
    fc.property(span, (one) => {
      expect(en.span(one)).toBe(spanWords(one));
    }),
  );
});

describe('German', () => {
  test.each<[Span, string]>([
    [yearSpan(1994), '1994'],
    [monthSpan(1995, 1), 'Januar 1995'],
    [{ ...yearSpan(1994), about: true }, 'um 1994'],
    [yearsSpan(1988, 2003), '1988 bis 2003'],
    [sinceSpan('1988-03-04'), 'ab 4. März 1988'],
    [{ from: '1990-01-01', to: '1999-12-31', precision: 'decade' }, 'die 1990er Jahre'],
  ])('says %j as %s', (span, words) => expect(de.span(span)).toBe(words));

  test('writes numbers, sums, lists and plurals its own way', () => {
    expect(de.number(1299.5, 1)).toBe('1.299,5');
    expect(de.price({ minor: 1299950, exponent: 2, currency: 'EUR' } as never).replace(/\s/g, ' ')).toBe(
      '12.999,50 EUR',
    );
    expect(de.list(['Griff', 'Naht', 'Futter'])).toBe('Griff, Naht und Futter');
    expect(de.count(1, { one: '# Foto', other: '# Fotos' })).toBe('1 Foto');
    expect(de.count(3, { one: '# Foto', other: '# Fotos' })).toBe('3 Fotos');
    expect(de.quote('made  in\n1994')).toBe('„made in 1994“');
  });

  test('names every country, those that are gone too', () => {
    expect(de.place('BE')).toBe('Belgien');
    expect(de.place('CSHH')).toBe('Tschechoslowakei');
    expect(currentPlaces.filter((code) => de.place(code) === code)).toEqual([]);
    expect(formerCodes.filter((code) => de.place(code) === code)).toEqual([]);
    expect(en.place('BE')).toBe(placeName('BE'));
  });
});

test('the language is the first one wanted that is written, else English', () => {
  expect(languageFor(['pt-BR', 'de-AT', 'en'])).toBe('de');
  expect(languageFor(['en-XA'])).toBe('en-XA');
  expect(languageFor(['ja'])).toBe('en');
});

test('made longer, every word is at least 40 % longer, in every shape', () => {
  const longer = pseudo({ title: 'What stands', of: (number: number) => `Photo ${number}`, lines: ['One line'] });
  for (const [long, short] of [
    [longer.title, 'What stands'],
    [longer.of(3), 'Photo 3'],
    [longer.lines[0]!, 'One line'],
  ] as const)
    expect(long.length).toBeGreaterThanOrEqual(short.length * 1.4);
});

test('a language has one kit, and the platform makes each of its formats once, when a sentence first needs it', () => {
  expect(kitFor('de')).toBe(de);
  const made = vi.spyOn(Intl, 'DateTimeFormat');
  const said = Array.from({ length: 20 }, () => kitFor('en-XA').day('1995-01-09'));
  expect(new Set(said)).toEqual(new Set(['9 January 1995']));
  expect(made).toHaveBeenCalledTimes(1);
  made.mockRestore();
});
