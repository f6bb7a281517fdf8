import { expect, test } from 'vitest';
import { tellingsOf } from '../../../src/case';
import { runChecks } from '../../../src/check';
import { yearSpan } from '../../../src/span';
import { sayTellings } from '../../../src/words';
import { claim, decoded, facts, kv0915, measureOf, stated, withPhotos } from '../check/sample';

/** Each agreement of these facts, by its check, with the ways in which it could have come out otherwise. */
function tellings(given: Parameters<typeof facts>[0]): Record<string, string[]> {
  const all = facts(given);
  const findings = runChecks(all).flatMap((one) => (one.outcome === 'speaks' ? one.findings : []));
  return Object.fromEntries(
    findings
      .map((one) => [one.check, tellingsOf(one, all).map(({ informs, narrows }) => `${informs} ${narrows}`)] as const)
      .filter(([, ways]) => ways.length > 0),
  );
}

test('an agreement tells why it could have come out otherwise, and whether it counts among several', () => {
  const made = claim('made', 'made in 1995', { span: yearSpan(1995) }, 'm');
  const again = claim('made', 'of 1995', { span: { ...yearSpan(1995), about: true } }, 'n');
  const quoted = { ...decoded('KV0915', []), id: 'quoted', from: { kind: 'claim' as const, claimId: 'q' } };
  expect(
    tellings({
      claims: [
        made,
        again,
        claim('bought', 'bought in 1996', { span: yearSpan(1996) }),
        claim('origin', 'made in Belgium', { place: 'BE' }),
      ],
      decodings: [kv0915, quoted],
      listing: withPhotos(1, { model: stated('Carryall 30'), measures: stated(measureOf('width', 300, '30 cm')) }),
    }),
  ).toEqual({
    'bought-after-making': ['bought-new true'],
    'claimed-dates-agree': ['another-date true'],
    'code-against-claimed-date': ['another-date true'],
    'codes-agree': ['another-code null'],
    'evidence-agrees': ['another-date true', 'bought-new true', 'another-place true'],
    'plant-against-origin': ['another-place true'],
    'plant-in-use': ['closed-period false'],
    'size-against-model': ['another-length null'],
  });
});

test('what speaks against a piece, or is missing, has nothing of the kind', () => {
  const claims = [claim('made', 'made in 1987', { span: yearSpan(1987) })];
  expect(tellings({ claims, decodings: [kv0915] })['code-against-claimed-date']).toBeUndefined();
});

test.each([
  ['en', 'It excludes little by itself, and is not counted where several facts agree.', 'Each gives a length'],
  ['de', 'Für sich schließt es wenig aus; wo mehrere Angaben übereinstimmen, zählt es nicht mit.', 'Beides nennt eine'],
] as const)('in %s it says how much of it counts, of dates and places alone', (language, little, length) => {
  const [period, side] = sayTellings(
    [
      { informs: 'closed-period', narrows: false },
      { informs: 'another-length', narrows: null },
    ],
    language,
  );
  expect(period).toMatch(new RegExp(`\\. ${little}$`));
  expect(side).toMatch(new RegExp(`^${length}[^.]*\\.$`));
});
