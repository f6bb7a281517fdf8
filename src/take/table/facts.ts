import type { Cell } from '../page/grid';
import { type Context, propose } from '../propose';
import { isPlantCode, plainCode } from '../said/code';
import { type Role, rolesNamed } from '../said/label';
import { onePeriod } from '../said/one-period';
import { partNamed } from '../said/part';
import { readPeriods, type Used, usedOf } from '../said/period';
import { readPlace } from '../said/place';
import { readAmount } from '../said/price';
import { readSizes } from '../said/size';
import { isOnPiece, opensPlaceOnPiece } from '../said/where';
import type { Proposal } from '../types';
import { tellingFinder } from '../words';
import { dated, saysNothing } from './row';

export interface Fact {
  label: string;
  value: string;
  selector: string;
}

const factsOf = (rows: readonly Cell[][]): Fact[] =>
  rows.flatMap((row) => {
    const [label, value] = [row[0]?.words, row[1]?.words];
    return label && value ? [{ label: label.text, value: value.text, selector: value.selector }] : [];
  });

const firstCode = tellingFinder('first-code');
const codeWords = tellingFinder('code');

/** What a box of facts on a maker tells of its codes: since when there are any, and where they sit. */
export function factsOfMaker(rows: readonly Cell[][], context: Context): Proposal[] {
  return factsOf(rows).flatMap(({ label, value, selector }): Proposal[] => {
    const said = { words: `${label} | ${value}`, selector };
    const [since, ...more] = readPeriods(value);
    if (firstCode(label).length > 0 && since?.used[0] && more.length === 0)
      return [propose(context, { kind: 'stamped', used: [since.used[0], null] }, said)];
    const places = rolesNamed(label).includes('where') && opensPlaceOnPiece(value);
    const placed = places && (codeWords(label).length > 0 || isOnPiece(value));
    return placed ? [propose(context, { kind: 'carrier', where: value }, said)] : [];
  });
}

const fewestFacts = 2;
const modelRoles = ['size', 'width', 'period', 'from', 'until', 'year', 'where', 'price'] as const;
const plantRoles = ['place', 'plant', 'period', 'from', 'until'] as const;

/** What is told of one model or workshop only; materials and years may be of all. */
const telling: ReadonlySet<Role> = new Set(['size', 'width', 'price', 'place', 'plant']);

/** Whether most labels tell what is told of a model or a workshop, and not of a maker. */
export const areFacts = (labels: readonly string[]): boolean => {
  const own: readonly Role[] = [...modelRoles, ...plantRoles];
  const tells = labels.some((label) => rolesNamed(label).some((role) => telling.has(role)));
  const known = labels.filter(
    (label) => rolesNamed(label).some((role) => own.includes(role)) || partNamed(label) !== null,
  );
  return tells && known.length >= fewestFacts && known.length >= labels.length * 0.5;
};
/** Labels beside their values, under a heading that names what they are of: a model, or the code of a workshop. */
export function readFacts(facts: readonly Fact[], context: Context): Proposal[] {
  const heading = context.heading;
  if (heading === null) return [];
  const { code, lookAlike } = plainCode(heading);
  if (isPlantCode(code)) return plantOfFacts(code, lookAlike, facts, context);
  // "Workshops", "Code", "Lining" below one another are of a maker.
  return labelled(facts, 'size', 'width', 'price') || !labelled(facts, 'place', 'plant')
    ? modelOfFacts(heading, facts, context)
    : [];
}

export const readFactsTable = (rows: readonly Cell[][], context: Context): Proposal[] =>
  readFacts(factsOf(rows), context);

const labelled = (facts: readonly Fact[], ...roles: readonly Role[]): Fact | undefined =>
  facts.find(({ label }) => rolesNamed(label).some((role) => roles.includes(role)));

/** The time that facts tell, in one or in two of them. */
function timeOf(facts: readonly Fact[]): { used: Used; of: Fact[] } {
  const whole = labelled(facts, 'period');
  const [from, until] = [labelled(facts, 'from'), labelled(facts, 'until')];
  const of = whole ? [whole] : [from, until].flatMap((one) => one ?? []);
  if (whole) return { used: usedOf(readPeriods(whole.value)), of };
  const [first, last] = [from, until].map((one) => (one ? readPeriods(one.value)[0] : undefined));
  if (!first && !last) return { used: { backwards: false }, of: [] };
  if (first?.form === 'range') return { used: usedOf([first]), of };
  return { used: { used: [first?.used[0] ?? null, last?.used[1] ?? null], backwards: false }, of };
}

const wordsOf = (facts: readonly Fact[]) => ({
  words: facts.map(({ label, value }) => `${label} | ${value}`).join(' | '),
  selector: facts[0]!.selector,
});

function plantOfFacts(code: string, lookAlike: boolean, facts: readonly Fact[], context: Context): Proposal[] {
  const places = facts.filter(({ label }) => rolesNamed(label).some((role) => role === 'place' || role === 'plant'));
  const place = readPlace(places.map(({ value }) => value).join(', '), 'cell');
  const { used, of } = timeOf(facts);
  if (!place) return [];
  const doubts = [used.backwards && ('backwards' as const), lookAlike && ('look-alike' as const)];
  return [
    propose(context, { kind: 'plant', code, ...place, ...dated(used) }, { ...wordsOf([...places, ...of]), doubts }),
  ];
}

function sizeOfFacts(facts: readonly Fact[]) {
  const whole = labelled(facts, 'size');
  const sides = (['width', 'height', 'depth'] as const).flatMap((role) => labelled(facts, role) ?? []);
  const of = whole ? [whole] : sides;
  const text = whole ? whole.value : sides.map(({ value }) => value.replace(/\s?(?:cm|mm|in)\.?$/, '')).join(' x ');
  const unit = /(?:cm|mm)\.?$/.exec(sides[0]?.value ?? '')?.[0] ?? 'cm';
  const size = of.length === 0 ? undefined : readSizes(whole ? text : `${text} ${unit}`)[0]?.size;
  return { size, of: size ? of : [] };
}

function modelOfFacts(model: string, facts: readonly Fact[], context: Context): Proposal[] {
  const { size, of } = sizeOfFacts(facts);
  const { used: told, of: dates } = timeOf(facts);
  const years = onePeriod(told.used);
  const found: Proposal[] = [];
  if (size || years) {
    const own = { ...(years && { made: years }), ...(told.about && { about: told.about }), ...(size && { size }) };
    const doubts = [told.backwards && ('backwards' as const)];
    found.push(propose(context, { kind: 'model', name: model, ...own }, { ...wordsOf([...of, ...dates]), doubts }));
  }
  for (const fact of facts) {
    const { label, value } = fact;
    const part = partNamed(label);
    const said = wordsOf([fact]);
    if (part && saysNothing(value)) continue;
    if (part) found.push(propose(context, { kind: 'construction', part, is: value, models: [model] }, said));
    else if (rolesNamed(label).some((role) => role === 'code' || role === 'where') && opensPlaceOnPiece(value))
      found.push(propose(context, { kind: 'carrier', model, where: value }, said));
    else if (rolesNamed(label).includes('price'))
      found.push(
        ...pricesOf(value, label, context.francs).map((price) =>
          propose(context, { kind: 'price', model, ...price }, said),
        ),
      );
  }
  return found.length >= fewestFacts || (size && years) ? found : [];
}

/** "£18.50 (1970)", or the year in the label: "Price in 1970". */
function pricesOf(
  value: string,
  label: string,
  francs: string | null,
): { amount: number; currency: string; year: number }[] {
  const year = [...readPeriods(value), ...readPeriods(label)].find(({ form }) => form === 'year')?.used[0];
  const amount = readAmount(value.replace(/[([][^)\]]{0,30}[)\]]/g, '').trim(), label, francs);
  return amount && year ? [{ ...amount, year: Number(year) }] : [];
}
