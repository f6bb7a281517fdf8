import type { Cell } from '../page/grid';
import { type Context, propose } from '../propose';
import { onePeriod } from '../said/one-period';
import { partNamed } from '../said/part';
import { readPeriods, usedOf } from '../said/period';
import { readSizes } from '../said/size';
import { isOnPiece, opensPlaceOnPiece } from '../said/where';
import type { Proposal } from '../types';
import { tellingFinder } from '../words';
import { rolesNamed } from './columns';

interface Fact {
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

/** Labels beside their values, under a heading that names a model: its size and years, what it is made of, where its code sits. */
export function readFactsTable(rows: readonly Cell[][], context: Context, _day: string): Proposal[] {
  const model = context.heading;
  if (model === null) return [];
  const facts = factsOf(rows);
  const labelled = (role: string) => facts.find(({ label }) => rolesNamed(label).includes(role as 'size'));
  const [size, made] = [labelled('size'), labelled('period')];
  const sides = size && readSizes(size.value)[0]?.size;
  const told = made && usedOf(readPeriods(made.value));
  const years = onePeriod(told?.used);
  const found: Proposal[] = [];
  if (sides || years) {
    const own = {
      ...(years && { made: years }),
      ...(told?.about && { about: told.about }),
      ...(sides && { size: sides }),
    };
    const words = [size, made].flatMap((fact) => (fact ? [`${fact.label} | ${fact.value}`] : [])).join(' | ');
    const doubts = [told?.backwards === true && ('backwards' as const)];
    found.push(
      propose(context, { kind: 'model', name: model, ...own }, { words, selector: (size ?? made)!.selector, doubts }),
    );
  }
  for (const { label, value, selector } of facts) {
    const part = partNamed(label);
    const words = `${label} | ${value}`;
    if (part)
      found.push(propose(context, { kind: 'construction', part, is: value, models: [model] }, { words, selector }));
    else if (rolesNamed(label).some((role) => role === 'code' || role === 'where') && opensPlaceOnPiece(value))
      found.push(propose(context, { kind: 'carrier', model, where: value }, { words, selector }));
  }
  return found.length >= 2 || (sides && years) ? found : [];
}
