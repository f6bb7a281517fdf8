import type { Layout } from '../../maker/types';
import { blanked } from '../said/blanked';
import { plainExamples, type SaidExample } from '../said/example';
import { doubtsOfForm, lookAlikes } from '../said/form-doubts';
import { readsExamples } from '../said/layout';
import { withSignsAdded, yearsShown } from '../said/layout-added';
import { layoutReferred, layoutTold } from '../said/layout-referred';
import { type SaidLayout, withLettersAdded } from '../said/layout-words';
import { type SaidPeriod, usedOf } from '../said/period';
import type { SaidSystem, Section } from './said-system';
import {
  behindOf,
  changeOf,
  joinedTime,
  periodAfter,
  periodBeside,
  periodOf,
  sinceThen,
  timeAlone,
} from './system-time';
import type { Told } from './told-sentence';

/**
 * An order told without counts, with an example in the sentence itself or in the next: "It is the month, then the year. 0394
 * is March 1994"; or an example before a description without one. Told only where the example reads under it as it says.
 */
export function describedAround(
  told: readonly Told[],
  at: number,
  isFirst: boolean,
): { system: SaidSystem; layout: SaidLayout; rest: Told[]; last: number } | null {
  const here = told[at]!;
  const next = told[at + 1];
  const joins = next !== undefined && next.periods.length === 0 && !next.noCode;
  const ahead =
    here.describes && here.counts === 0 && (here.examples.length > 0 || (joins && next.examples.length > 0));
  const behind = here.examples.length > 0 && !here.describes && joins && next.examples.length === 0 && next.describes;
  if (!ahead && !behind) return null;
  const last = behind || here.examples.length === 0 ? at + 1 : at;
  const { system, layout, rest } = systemOf(
    told.slice(at, last + 1),
    null,
    null,
    null,
    timeOf(told, at, isFirst, last),
  );
  const others = rest ? [{ ...told[last]!, examples: rest }] : [];
  return system && layout?.by === 'words' && layout.fits ? { system, layout, rest: others, last } : null;
}

/** The time told beside a description; of an answer on one code, that which any of its sentences tells. */
function timeOf(told: readonly Told[], at: number, isFirst: boolean, last: number): readonly SaidPeriod[] {
  const after = periodAfter(told[at]!, told[at - 1], undefined) ?? [];
  if (after.length > 0) return after;
  const beside = periodBeside(isFirst ? told[at - 1] : undefined, behindOf(told, last));
  if (beside.length > 0 || !told[at]!.assumed) return beside;
  const times = told.flatMap((one) => timeAlone(one) ?? []);
  return times.length === 1 ? times : [];
}

/** The example of a form that was told before without one, and without its time: "Example: OT0779 (July 1979)". */
export function exampleOf({ sentence, examples }: Told, layout: SaidLayout): SaidSystem | null {
  if (examples.length === 0 || !readsExamples(layout.layout, examples)) return null;
  const own = { kind: 'code-system' as const, layout: layout.layout, examples: plainExamples(examples) };
  return { own, doubts: [lookAlikes(examples)], sentences: [sentence] };
}

/**
 * "Since 1980 the number begins with the letter of the works: G1182 is …", "from 1986 the order was reversed": the form before,
 * changed as its sentence or its example says. `beside` is the time that is told beside it.
 */
export function changedBy(
  here: Told,
  before: SaidLayout | null,
  beside: readonly SaidPeriod[],
): { system: SaidSystem; layout: SaidLayout } | null {
  const { sentence, examples } = here;
  const plain = blanked(sentence.text, examples);
  const added = here.periods.length > 0 && before?.fits ? withLettersAdded(plain, before) : null;
  const layout = withSignsAdded(plain, examples, before) ?? added ?? layoutReferred(plain, examples, before);
  if (!layout || !readsExamples(layout.layout, examples)) return null;
  const periods = joinedTime(changeOf(here), beside);
  // Neither its time nor an example: of which codes it is told stays open.
  if (periods.length === 0 && examples.length === 0) return null;
  const { backwards, ...used } = usedOf(periods);
  const own = { kind: 'code-system' as const, ...used, layout: layout.layout, examples: plainExamples(examples) };
  return { system: { own, doubts: [backwards && 'backwards', lookAlikes(examples)], sentences: [sentence] }, layout };
}

/** Examples under a heading that writes how codes of its period are built. */
export function underHeading({ sentence, examples }: Told, { period }: Section, layout: Layout): SaidSystem {
  const { backwards, ...used } = usedOf([period]);
  return {
    own: { kind: 'code-system', ...used, layout, examples: plainExamples(examples) },
    doubts: [backwards && 'backwards', !readsExamples(layout, examples) && 'examples-disagree', lookAlikes(examples)],
    sentences: [sentence],
  };
}

/** More than these in a few sentences are a muddle. */
const mostLooks = 4;

interface Settled {
  system: SaidSystem | null;
  layout: SaidLayout | null;
  /** Examples that look otherwise: they are of another form. */
  rest?: SaidExample[];
}
/** How an example looks: its letters and digits, whatever they are. */
const lookOf = ({ code }: { code: string }): string =>
  code
    .replace(/\p{Lu}/gu, 'A')
    .replace(/\d/g, '0')
    .replace(/[^A0]/g, '');

/** The system that a group of sentences tells between them, by words and examples; null where neither settles a form. */
export function systemOf(
  group: readonly Told[],
  known: SaidLayout | null,
  above: Section | null,
  earlier: SaidLayout | null = null,
  beside: readonly SaidPeriod[] = [],
  last: SaidSystem | undefined = undefined,
): Settled {
  let text = '';
  const examples: SaidExample[] = [];
  for (const { sentence, examples: own } of group) {
    for (const one of own) examples.push({ ...one, start: one.start + text.length, end: one.end + text.length });
    text += `${sentence.text} `;
  }
  const looks = new Set(examples.map(lookOf));
  if (looks.size > 1 && looks.size <= mostLooks)
    for (const own of looks) {
      const alike = group.map((told) => ({ ...told, examples: told.examples.filter((one) => lookOf(one) === own) }));
      const told = systemOf(alike, known, above, earlier, beside, last);
      if (told.system && told.layout?.by === 'words' && told.layout.fits)
        return { ...told, rest: examples.filter((one) => lookOf(one) !== own) };
    }
  const plain = blanked(text, examples);
  const added = withLettersAdded(plain, earlier);
  const settled =
    added && readsExamples(added.layout, examples)
      ? added
      : (layoutTold(text, examples, earlier, known?.units) ?? withSignsAdded(plain, examples, earlier));
  const isConfirmed = settled?.by === 'words' && settled.fits && settled.units.length > 0;
  if (group.some(({ assumed }) => assumed) && !isConfirmed) {
    const bare = group.map((one) => (one.assumed ? { ...one, examples: [], assumed: false } : one));
    return systemOf(bare, known, above, earlier, beside, last);
  }
  if (!settled) return { system: null, layout: null };
  const told = settled.referred ? changeOf(group[0]!) : periodOf(group[0]!);
  const own = joinedTime(told, beside);
  const periods = own.length > 0 ? own : above ? [above.period] : [];
  // Neither a period nor an example: words about codes in general.
  if (periods.length === 0 && examples.length === 0) return { system: null, layout: settled };
  const { backwards, ...used } = usedOf(periods.map((period) => sinceThen(period, group[0]!, last)));
  const shown = examples.length > 0 ? plainExamples(examples) : yearsShown(settled.layout, text);
  const system: SaidSystem = {
    own: { kind: 'code-system', ...used, layout: settled.layout, examples: shown },
    doubts: doubtsOfForm(settled, examples, backwards),
    sentences: group.map(({ sentence }) => sentence),
  };
  return { system, layout: settled };
}
