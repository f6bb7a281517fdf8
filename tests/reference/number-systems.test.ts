import { gtin, luhn } from 'cdigit';
import ContainerValidator from 'container-validator';
import ISBN from 'isbn3';
import validator from 'validator';
import vinValidator from 'vin-validator';
import { describe, expect, test } from 'vitest';
import { decodeExactly } from '../../src/code';
import { readFixture } from './fixture';
import { chanceFrom, corrupt, pick, pickText, readSystem, systemNames } from './number-systems';

const digits = '0123456789';
const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const seed = 20_251_125;
const rounds = 10_000;
const container = new ContainerValidator();
const modelYears = 'ABCDEFGHJKLMNPRSTVWXY123456789';
const vinAlphabet = 'ABCDEFGHJKLMNPRSTUVWXYZ0123456789';

/** Makes valid codes by trying last characters until the other library accepts: none of our arithmetic is used. */
const withCheck = (body: string, at: number, of: string, accepts: (code: string) => boolean): string | null => {
  const found = [...of].find((check) => accepts(body.slice(0, at) + check + body.slice(at)));
  return found === undefined ? null : body.slice(0, at) + found + body.slice(at);
};

interface Comparison {
  system: string;
  library: string;
  accepts: (code: string) => boolean;
  alphabet: string;
  valid: (chance: () => number) => string | null;
  /** A difference that the published rule explains; such codes are counted and not compared. */
  explained?: (code: string) => boolean;
}

const comparisons: Comparison[] = [
  {
    system: 'iso-6346',
    library: 'container-validator 1.1.0',
    accepts: (code) => container.isValid(code),
    alphabet: letters + digits,
    valid: (chance) =>
      withCheck(pickText(chance, letters, 3) + pick(chance, 'UJZ') + pickText(chance, digits, 6), 10, digits, (code) =>
        container.isValid(code),
      ),
  },
  {
    system: 'iso-6346',
    library: 'validator 13.15.35',
    accepts: (code) => validator.isISO6346(code),
    alphabet: letters + digits,
    valid: (chance) =>
      withCheck(`${pickText(chance, letters, 3)}U${pickText(chance, digits, 6)}`, 10, digits, validator.isISO6346),
    // Its pattern is anchored at one end only for J and Z, so it accepts those without a check digit or with text around.
    explained: (code) => /[JZ,][0-9]{6,7}$/.test(code) || (/^[A-Z]{3}U[0-9]{7}/.test(code) && code.length !== 11),
  },
  {
    system: 'vin',
    library: 'vin-validator 1.0.0',
    accepts: (code) => vinValidator.validate(code),
    alphabet: vinAlphabet,
    valid: (chance) =>
      withCheck(
        pickText(chance, vinAlphabet, 8) + pick(chance, modelYears) + pickText(chance, vinAlphabet, 7),
        8,
        `${digits}X`,
        (code) => vinValidator.validate(code),
      ),
    // It does not know that U, Z and 0 are no model years (49 CFR 565.15, Table VII).
    explained: (code) => 'UZ0'.includes(code[9] ?? '-'),
  },
  {
    system: 'gtin',
    library: 'cdigit 5.0.1',
    accepts: (code) => [8, 12, 13, 14, 17, 18].includes(code.length) && gtin.validate(code),
    alphabet: digits,
    valid: (chance) => gtin.generate(pickText(chance, digits, pick(chance, [7, 11, 12, 13, 16, 17]))),
  },
  {
    system: 'gtin',
    library: 'validator 13.15.35 (lengths 8, 13, 14)',
    accepts: (code) => validator.isEAN(code),
    alphabet: digits,
    valid: (chance) =>
      withCheck(pickText(chance, digits, pick(chance, [7, 12, 13])), Number.POSITIVE_INFINITY, digits, validator.isEAN),
    // It knows three of the six lengths.
    explained: (code) => [12, 17, 18].includes(code.length),
  },
  {
    system: 'isbn',
    library: 'validator 13.15.35',
    accepts: (code) => validator.isISBN(code, 10) || (/^97[89]/.test(code) && validator.isISBN(code, 13)),
    alphabet: `${digits}X`,
    valid: (chance) =>
      chance() < 0.5
        ? withCheck(pickText(chance, digits, 9), 9, `${digits}X`, (code) => validator.isISBN(code, 10))
        : withCheck(`97${pick(chance, '89')}${pickText(chance, digits, 9)}`, 12, digits, (code) =>
            validator.isISBN(code, 13),
          ),
  },
  {
    system: 'imei',
    library: 'validator 13.15.35',
    accepts: (code) => validator.isIMEI(code),
    alphabet: digits,
    valid: (chance) => withCheck(pickText(chance, digits, 14), 14, digits, validator.isIMEI),
  },
  {
    system: 'imei',
    library: 'cdigit 5.0.1 (Luhn)',
    accepts: (code) => code.length === 15 && luhn.validate(code),
    alphabet: digits,
    valid: (chance) => luhn.generate(pickText(chance, digits, 14)),
  },
];

test.each(systemNames)('%s is accepted as a maker file and its examples decode', (name) => {
  expect(readSystem(name).codeSystems.length).toBeGreaterThan(0);
});

describe.each(comparisons)('$system against $library', ({ system, accepts, alphabet, valid, explained }) => {
  const file = readSystem(system);
  const chance = chanceFrom(seed);
  const codes: string[] = [];
  while (codes.length < rounds) {
    const code = valid(chance);
    if (code !== null) codes.push(code);
  }
  const differences = (tried: string[]) =>
    tried.filter((code) => !explained?.(code) && decodeExactly(code, file).length > 0 !== accepts(code));

  test(`agrees on ${rounds} valid codes (seed ${seed})`, () => {
    expect(codes.filter(accepts)).toHaveLength(rounds);
    expect(differences(codes)).toEqual([]);
  }, 60_000);

  test(`agrees on ${rounds} corrupted codes (seed ${seed})`, () => {
    const corrupted = codes.map((code) => corrupt(chance, code, alphabet));
    expect(differences(corrupted)).toEqual([]);
    const compared = corrupted.filter((code) => !explained?.(code));
    expect(compared.length, 'most codes are compared').toBeGreaterThan(rounds * 0.6);
    expect(compared.filter((code) => !accepts(code)).length, 'most are refused').toBeGreaterThan(rounds * 0.5);
  }, 60_000);
});

test('every ISBN that isbn3 parses is read (it also knows which registration groups exist)', () => {
  const chance = chanceFrom(seed);
  const file = readSystem('isbn');
  let parsed = 0;
  for (let round = 0; round < rounds; round++) {
    const code =
      chance() < 0.5 ? pickText(chance, digits, 9) + pick(chance, `${digits}X`) : `978${pickText(chance, digits, 10)}`;
    if (!ISBN.parse(code)) continue;
    parsed++;
    expect(decodeExactly(code, file), code).toHaveLength(1);
  }
  expect(parsed).toBeGreaterThan(rounds / 20);
}, 60_000);

interface Published {
  systems: Record<
    string,
    { examples: { full?: string; vin?: string; code?: string; valid?: boolean; body?: string }[] }
  >;
}
const published = readFixture<Published>('reference/check_digit_systems.json');

describe.skipIf(!published)('worked examples (reference/check_digit_systems.json; skipped: not present)', () => {
  const examples = ['iso6346', 'vin', 'gtin', 'isbn10', 'isbn13', 'imei', 'dot_tin'].flatMap((name) =>
    (published?.systems[name]?.examples ?? []).map(({ full, vin, code, valid }) => ({
      name,
      code: (full ?? vin ?? code)!.replace(/-/g, ''),
      valid: valid ?? true,
    })),
  );
  const files: Record<string, string> = { iso6346: 'iso-6346', isbn10: 'isbn', isbn13: 'isbn', dot_tin: 'dot-tyre' };
  test.each(examples)('$name $code', ({ name, code, valid }) => {
    expect(decodeExactly(code, readSystem(files[name] ?? name)).length > 0).toBe(valid);
  });
  test('all of the published examples are tried', () => expect(examples.length).toBeGreaterThanOrEqual(23));
});

test('a VIN’s model year is the published one, and its seventh place tells the cycle', () => {
  const file = readSystem('vin');
  expect(decodeExactly('1G4AH59H45G118341', file).map(({ span }) => span?.from)).toEqual(['2005-01-01']);
  expect(decodeExactly('1J9RP1A36A1644345', file).map(({ span }) => span?.from)).toEqual(['2010-01-01']);
});

test('a tyre of three digits keeps every decade open; week 01 is the first full week from Sunday', () => {
  const file = readSystem('dot-tyre');
  expect(decodeExactly('317', file).map(({ span }) => span?.from?.slice(0, 4))).toEqual(['1977', '1987', '1997']);
  expect(decodeExactly('0109', file)[0]?.span).toEqual({ from: '2009-01-04', to: '2009-01-10', precision: 'week' });
});
