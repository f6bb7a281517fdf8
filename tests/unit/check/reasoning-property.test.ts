import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Facts, type Finding, runChecks } from '../../../src/check';
import { type Evidence, type Pair, pairsOf, reason } from '../../../src/evidence';
import { given } from './reasoning-cases';

const runs = 10_000;
const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);

/** What tells of two facts that stand to each other by a rule. */
const tellers = {
  'code-against-claimed-date': 'claimed-date-code',
  'mark-against-claimed-date': 'claimed-date-mark',
  'mark-against-code-date': 'code-mark',
  'plant-against-origin': 'origin-code',
  'mark-against-origin': 'origin-mark',
  'mark-against-plant': 'code-mark-place',
  'origin-claims-agree': 'origins',
  'origin-country-existed': 'country-date',
  'claimed-dates-agree': 'claimed-dates',
  'bought-after-making': 'making-purchase',
  'construction-against-date': 'material-date',
  'model-made-then': 'model-date',
} as const;
/** What tells of an age, a size, a sum or a value against one other fact, or of a code against its own time. */
const asideTellers = {
  'code-system-in-use': 'code-system',
  'plant-in-use': 'code-plant',
  'date-not-in-future': 'today-date',
  'age-word-fits': 'age-word-date',
  'fresh-against-age': 'fresh-date',
  'code-before-stamping': 'stamping-date',
  'measures-agree': 'sizes',
  'size-against-model': 'size-model',
  'named-width': 'size-name',
  'measures-proportion': 'proportion-family',
  'prices-agree': 'price-data',
  'price-cut-plausible': 'price-cut',
  'new-price-plausible': 'new-price',
  'used-price-plausible': 'used-price',
  'condition-words-agree': 'new-used',
  'leather-words-agree': 'leather-imitation',
  'metal-words-agree': 'solid-metal',
  'maker-stated': 'makers',
  'codes-agree': 'codes',
} as const;
type AsideTeller = keyof typeof asideTellers;
const isAsideTeller = (check: string): check is AsideTeller => check in asideTellers;
type Teller = keyof typeof tellers;
const placed: Teller[] = ['plant-against-origin', 'mark-against-origin', 'mark-against-plant', 'origin-claims-agree'];
const isTeller = (check: string): check is Teller => check in tellers;

/** How a finding says that two facts stand to each other, as the reasoning would say it. */
function kindOf(pair: Pair): Finding['kind'] | null {
  if (pair.relation === 'conflicts') return pair.hard ? 'contradiction' : 'doubt';
  return pair.relation === 'agrees' ? 'agreement' : null;
}

const isOver = (check: Teller, over: Pair['over']) => (placed.includes(check) ? 'place' : 'date') === over;

const basesOf = (ids: readonly string[], evidence: readonly Evidence[]) =>
  new Set(evidence.filter(({ id }) => ids.includes(id)).map(({ basis }) => basis));

test(`no finding says otherwise than the reasoning, over ${runs} cases`, { timeout: 240_000 }, () => {
  const spoken = new Map<string, number>();
  fc.assert(
    fc.property(given, (all) => {
      const pairs = pairsOf(all.evidence);
      const { conflicts, agreeing, agrees } = all.reasoning;
      const findings = runChecks(all).flatMap((one) => (one.outcome === 'speaks' ? one.findings : []));
      for (const finding of findings) {
        const { check, kind, evidence } = finding;
        if (check === 'evidence-agrees') {
          expect(kind === 'agreement').toBe(agrees);
          const same = [...conflicts, ...agreeing].find((one) => one.evidence.join() === evidence.join());
          expect(same).toBeDefined();
          if (same && 'strength' in same && kind === 'contradiction') expect(same.strength).toBe('hard');
          continue;
        }
        if (isAsideTeller(check)) {
          spoken.set(`${check} ${kind}`, (spoken.get(`${check} ${kind}`) ?? 0) + 1);
          sameAsReasoned(finding, all, pairs);
          continue;
        }
        if (!isTeller(check)) continue;
        spoken.set(`${check} ${kind}`, (spoken.get(`${check} ${kind}`) ?? 0) + 1);
        if (check === 'claimed-dates-agree' && kind === 'agreement') {
          const ids = finding.claims.map((id) => `claim-${id}`);
          const between = pairs.filter(
            ({ rule, left, right }) => rule === tellers[check] && ids.includes(left) && ids.includes(right),
          );
          expect(between.every(({ relation }) => relation === 'agrees')).toBe(true);
          continue;
        }
        const [one, other] = evidence;
        const isLater = check === 'construction-against-date' && 'later' in finding.data;
        const pair = pairs.find(
          ({ rule, left, right }) =>
            rule === (isLater ? 'later-material-date' : tellers[check]) &&
            [left, right].includes(one ?? '') &&
            [left, right].includes(other ?? ''),
        );
        // What is not of the piece's time agrees with the seller's word that it is later.
        if (isLater) {
          expect([kind, pair?.relation]).toEqual(['agreement', 'conflicts']);
          continue;
        }
        // A mark of the text against a date has its own evidence alone; its claim names the other side.
        const told = pair ?? pairOfClaim(finding, pairs, tellers[check]);
        expect(told && kindOf(told)).toBe(kind);
        if (!told || kind === 'agreement') continue;
        // What a finding speaks against is a conflict of the reasoning as well, and no softer there.
        const own = basesOf([told.left, told.right], all.evidence);
        const conflict = conflicts.find(
          (some) =>
            some.over === told.over && [...basesOf(some.evidence, all.evidence)].every((basis) => own.has(basis)),
        );
        expect(conflict).toBeDefined();
        if (kind === 'contradiction') expect(conflict?.strength).toBe('hard');
      }
      // And what the reasoning calls a conflict of two facts is never praised by a finding on the same.
      for (const { evidence, over } of conflicts) {
        if (evidence.length !== 2) continue;
        const praise = findings.find(
          ({ check, kind, evidence: ids }) =>
            isTeller(check) && kind === 'agreement' && isOver(check, over) && ids.join() === evidence.join(),
        );
        expect(praise).toBeUndefined();
      }
    }),
    { seed, numRuns: runs },
  );
  // The generator makes every check speak in every kind that it has of a rule.
  expect([...new Set([...spoken.keys()].map((key) => key.split(' ')[0]))].sort()).toEqual(
    Object.keys({ ...tellers, ...asideTellers }).sort(),
  );
});

/** What such a finding rests on stands to each other as it says, and as the reasoning says. */
function sameAsReasoned({ check, kind, evidence, claims, data }: Finding, all: Facts, pairs: readonly Pair[]): void {
  // A unit taken for another explains why sides and model are apart.
  const rule = data.fault === 'unit' ? 'size-model' : asideTellers[check as AsideTeller];
  // What a word says of an age names the word alone; the date is that of a claim that it names, or of a code.
  const isDate = (id: string) => /^(?:age-word-fits|fresh-against-age)$/.test(check) && isDateOf(id, claims);
  const told = pairs.filter(
    (pair) =>
      pair.rule === rule &&
      evidence.includes(pair.left) &&
      (evidence.includes(pair.right) || isDate(pair.right)) &&
      (data.fault === 'unit' || kindOf(pair) === kind),
  );
  expect(told.length).toBeGreaterThan(0);
  for (const pair of told) {
    const isSame = ({ evidence: ids }: { evidence: string[] }) => ids.join() === [pair.left, pair.right].join();
    if (kind === 'agreement')
      expect(all.reasoning.agreements.some((one) => one.rule === rule && isSame(one))).toBe(true);
    else if (data.fault !== 'unit') {
      const own = basesOf([pair.left, pair.right], all.evidence);
      // Of one code both its system and its plant may exclude it: told once in the reasoning.
      const { conflicts } = all.reasoning;
      const conflict =
        conflicts.find(isSame) ??
        conflicts.find((some) => [...basesOf(some.evidence, all.evidence)].every((basis) => own.has(basis)));
      expect(conflict).toBeDefined();
      if (kind === 'contradiction') expect(conflict?.strength).toBe('hard');
    }
  }
}

const isDateOf = (id: string, claims: readonly string[]): boolean =>
  id.startsWith('reading-') || claims.some((claim) => id === `claim-${claim}`);

/** Findings that name the evidence of one side and the claim of the other. */
const pairOfClaim = ({ evidence, claims }: Finding, pairs: readonly Pair[], rule: string): Pair | undefined =>
  pairs.find(
    (pair) =>
      pair.rule === rule &&
      evidence.some((id) => id === pair.left || id === pair.right) &&
      claims.some((id) => `claim-${id}` === pair.left || `claim-${id}` === pair.right),
  );

test('a reasoning over two facts alone says of them what the pair says', () => {
  fc.assert(
    fc.property(given, ({ evidence }) => {
      for (const pair of pairsOf(evidence)) {
        const two = evidence.filter(({ id }) => id === pair.left || id === pair.right);
        const { conflicts } = reason(two);
        const conflict = conflicts.find(({ over }) => over === pair.over);
        // That a part is later is what the seller says: no conflict of the piece.
        expect(conflict !== undefined).toBe(pair.relation === 'conflicts' && pair.rule !== 'later-material-date');
        // Alone nothing softens it: what the listing says besides is not there.
        if (pair.hard) expect(conflict?.strength).toBe('hard');
      }
    }),
    { seed, numRuns: 500 },
  );
});
