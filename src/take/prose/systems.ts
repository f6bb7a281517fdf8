import type { Layout } from '../../maker/types';
import type { OwnFields } from '../propose';
import { blanked } from '../said/blanked';
import { plainCode } from '../said/code';
import { codeShown, exactDates, plainExamples, type SaidExample } from '../said/example';
import { readsExamples } from '../said/layout';
import { withSignsAdded, yearsShown } from '../said/layout-added';
import { readLayoutWords, type SaidLayout, withLettersAdded } from '../said/layout-words';
import { onePeriod, timeBeside, timeFrom } from '../said/one-period';
import { type SaidPeriod, usedOf } from '../said/period';
import { withoutPeriods } from '../said/used-text';
import type { Doubt } from '../types';
import { tellingFinder } from '../words';
import type { Sentence } from './sentences';
import { look, type Told } from './told-sentence';

export interface SaidSystem {
  own: OwnFields;
  doubts: (Doubt | false)[];
  /** First and last sentence that tell it. */
  sentences: Sentence[];
}

/** What the heading of a section tells of the codes below it: "YYMM (1984–1985)". */
export interface Section {
  period: SaidPeriod;
  layout: Layout | null;
}

const introduced = tellingFinder('introduced');
const systemWords = tellingFinder('code', 'system-word', 'time-of-use');
const afterwards = tellingFinder('afterwards');
const letterWords = tellingFinder('letters');

/**
 * Code systems that a paragraph's sentences tell, and codes whose date it tells without a system. `earlier` is the form that
 * paragraphs before told last, which "then a letter was put before it" goes on from; the form told last is handed back.
 */
export function systemsIn(
  sentences: readonly Sentence[],
  day: string,
  above: Section | null = null,
  earlier: SaidLayout | null = null,
  shown: string | null = null,
  open: SaidLayout | null = null,
): { found: SaidSystem[]; known: SaidLayout | null; pending: SaidLayout | null } {
  const told = withShown(
    sentences.flatMap(clausesOf).map((sentence) => look(sentence, day)),
    day,
    shown,
  );
  const found: SaidSystem[] = [];
  let known: SaidLayout | null = null;
  let pending = open;
  for (let at = 0; at < told.length; at += 1) {
    const here = told[at]!;
    if (here.noCode && here.periods.some(({ form }) => form === 'until')) {
      found.push(stampedFrom(here));
      continue;
    }
    const described = describedAround(told, at);
    if (described) {
      found.push(described.system, ...loose(described.rest));
      known = described.layout;
      at = described.last;
      continue;
    }
    const lengthened: ReturnType<typeof lengthenedBy> = here.counts === 0 ? lengthenedBy(here, known ?? earlier) : null;
    if (lengthened) {
      found.push(lengthened.system);
      known = lengthened.layout;
      continue;
    }
    const shownOf = here.counts === 0 && pending ? exampleOf(here, pending) : null;
    if (shownOf) {
      found.push(shownOf);
      pending = null;
      continue;
    }
    if (here.counts === 0) {
      const under = above?.layout && here.examples.length > 0 ? underHeading(here, above, above.layout) : null;
      found.push(...(under ? [under] : loose([here])));
      continue;
    }
    // What follows belongs to it until another form is counted.
    let last = at;
    while (goesOn(told[last + 1]) || (isBetween(told[last + 1]) && goesOn(told[last + 2]))) last += 1;
    const group = told.slice(at, last + 1);
    const beside =
      group.map(timeAlone).find((time) => time !== null) ??
      periodAfter(told[at]!, told[at - 1], found.at(-1)) ??
      periodBeside(told[at - 1], behindOf(told, last));
    const { system, layout, rest } = systemOf(group, known, above, known ?? earlier, beside, found.at(-1));
    if (system) found.push(system, ...loose(rest ? [{ ...group.at(-1)!, examples: rest }] : []));
    else found.push(...loose(group));
    pending = system === null && layout?.by === 'words' ? layout : null;
    known = layout ?? known;
    at = last;
  }
  return { found, known: known ?? earlier, pending };
}

const goesOn = (next: Told | undefined): boolean =>
  next !== undefined && next.periods.length === 0 && !next.noCode && (next.units > 0 || next.examples.length > 0);
/** "The letter in the middle: the workshop.", or when the form was used, between its parts and their example. */
const isBetween = (next: Told | undefined): boolean =>
  next !== undefined &&
  !next.noCode &&
  ((next.periods.length === 0 && letterWords(next.sentence.text).length > 0) || timeAlone(next) !== null);

/** "Until 1952 a letter; from 1953 four figures": clauses that each have their own time are told each by itself. */
function clausesOf(sentence: Sentence): Sentence[] {
  const clauses = sentence.text.split(/(?<=;)\s/);
  const dated = clauses.filter((clause) => withoutPeriods(clause).periods.some(({ form }) => form !== 'year'));
  if (clauses.length < 2 || dated.length < clauses.length) return [sentence];
  let start = sentence.start;
  return clauses.map((text) => {
    const clause = { text, start };
    start += text.length + 1;
    return clause;
  });
}

/** "It says 4 T 78." "Month, workshop, year. Yours is April 1978": the only date of an answer is that of the code asked for. */
function withShown(told: Told[], day: string, shown: string | null): Told[] {
  if (told.some(({ examples }) => examples.length > 0)) return told;
  const at = told.findIndex(({ describes, counts }) => describes || counts > 0);
  if (at < 0) return told;
  const [date, ...more] = told.flatMap(({ sentence }) => exactDates(sentence.text, day));
  if (!date || more.length > 0) return told;
  const code = told.reduce((last, { sentence }) => codeShown(sentence.text, day) ?? last, shown);
  if (code === null) return told;
  const { code: plain, lookAlike } = plainCode(code);
  const example = { code: plain, reads: date.reads, lookAlike, start: 0, end: 0 };
  return told.map((one, index) => (index === at ? { ...one, examples: [example], assumed: true } : one));
}

/** "Afterwards it is a running number": the time from the end of the form that was told last. */
function periodAfter(
  { sentence, periods }: Told,
  ahead: Told | undefined,
  last: SaidSystem | undefined,
): SaidPeriod[] | null {
  const [link] = afterwards(sentence.text);
  if (periods.length > 0 || !link || link.start > 2) return null;
  const [told] = ahead && timeAlone(ahead) ? timeAlone(ahead)! : [];
  const before = told?.used ?? (last && 'used' in last.own ? onePeriod(last.own.used) : undefined);
  const used = timeBeside(before, 'afterwards');
  return used ? [{ used, about: [], backwards: false, form: 'since', start: 0, end: 0 }] : [];
}

/** The sentence behind those of a form that may tell its time: others between may name what its letters stand for. */
function behindOf(told: readonly Told[], last: number): Told | undefined {
  const next = told[last + 1];
  if (!next || next.periods.length > 0 || next.counts > 0 || next.examples.length > 0 || next.noCode) return next;
  return told[last + 2];
}

/** "The second system ran from 1960 to 1972." before or behind the sentences that tell how it was built. */
function periodBeside(before: Told | undefined, behind: Told | undefined): SaidPeriod[] {
  return (before && timeAlone(before)) ?? (behind && timeAlone(behind)) ?? [];
}

/** The time that a sentence tells of a form of the code, and nothing else of it: "This was used from 1968 to 1990." */
export function timeAlone({ sentence, periods, counts, examples, noCode, describes }: Told): SaidPeriod[] | null {
  if (counts > 0 || examples.length > 0 || noCode || describes) return null;
  const told = periods.filter(({ form }) => form !== 'year');
  return told.length === 1 && systemWords(sentence.text).length > 0 ? told : null;
}

/**
 * An order told without counts, with an example in the sentence itself or in the next: "It is the month, then the year. 0394
 * is March 1994"; or an example before a description without one. Told only where the example reads under it as it says.
 */
function describedAround(
  told: readonly Told[],
  at: number,
): { system: SaidSystem; layout: SaidLayout; rest: Told[]; last: number } | null {
  const here = told[at]!;
  const next = told[at + 1];
  const joins = next !== undefined && next.periods.length === 0 && !next.noCode;
  const ahead =
    here.describes && here.counts === 0 && (here.examples.length > 0 || (joins && next.examples.length > 0));
  const behind = here.examples.length > 0 && !here.describes && joins && next.examples.length === 0 && next.describes;
  if (!ahead && !behind) return null;
  const last = behind || here.examples.length === 0 ? at + 1 : at;
  const { system, layout, rest } = systemOf(told.slice(at, last + 1), null, null);
  const others = rest ? [{ ...told[last]!, examples: rest }] : [];
  return system && layout?.by === 'words' && layout.fits ? { system, layout, rest: others, last } : null;
}

/** The example of a form that was told before without one, and without its time: "Example: OT0779 (July 1979)". */
function exampleOf({ sentence, examples }: Told, layout: SaidLayout): SaidSystem | null {
  if (examples.length === 0 || !readsExamples(layout.layout, examples)) return null;
  const own = { kind: 'code-system' as const, layout: layout.layout, examples: plainExamples(examples) };
  return { own, doubts: [examples.some(({ lookAlike }) => lookAlike) && 'look-alike'], sentences: [sentence] };
}

/** "Since 1980 the number begins with the letter of the works: G1182 is …": the form before with letters more, as its example shows. */
function lengthenedBy(here: Told, before: SaidLayout | null): { system: SaidSystem; layout: SaidLayout } | null {
  const { sentence, examples } = here;
  const plain = blanked(sentence.text, examples);
  const added = here.periods.length > 0 && before?.fits ? withLettersAdded(plain, before) : null;
  const layout = withSignsAdded(plain, examples, before) ?? added;
  if (!layout || !readsExamples(layout.layout, examples)) return null;
  const { backwards, ...used } = usedOf(periodOf(here));
  const own = { kind: 'code-system' as const, ...used, layout: layout.layout, examples: plainExamples(examples) };
  const doubts = [
    backwards && ('backwards' as const),
    examples.some(({ lookAlike }) => lookAlike) && ('look-alike' as const),
  ];
  return { system: { own, doubts, sentences: [sentence] }, layout };
}

const loose = (group: readonly Told[]): SaidSystem[] =>
  group.flatMap(({ sentence, examples, assumed }) =>
    (assumed ? [] : examples).map(({ code, reads, lookAlike }) => ({
      own: { kind: 'example' as const, code, reads },
      doubts: [lookAlike && 'look-alike'],
      sentences: [sentence],
    })),
  );

/** Examples under a heading that writes how codes of its period are built. */
function underHeading({ sentence, examples }: Told, { period }: Section, layout: Layout): SaidSystem {
  const { backwards, ...used } = usedOf([period]);
  return {
    own: { kind: 'code-system', ...used, layout, examples: plainExamples(examples) },
    doubts: [backwards && 'backwards', !readsExamples(layout, examples) && 'examples-disagree'],
    sentences: [sentence],
  };
}

function stampedFrom({ sentence, periods }: Told): SaidSystem {
  const until = periods.find(({ form }) => form === 'until')!;
  return { own: { kind: 'stamped', ...timeFrom(until.used, until.about)! }, doubts: [], sentences: [sentence] };
}

/** The period of a description; "in 1972 a code of four digits appeared" tells its start. */
function periodOf({ sentence, periods }: Told): SaidPeriod[] {
  const own = periods.filter(({ form }) => form !== 'year').slice(0, 1);
  const [year, ...more] = periods;
  if (own.length > 0 || !year || more.length > 0 || introduced(sentence.text).length === 0) return own;
  return [{ ...year, used: [year.used[0], null], form: 'since' }];
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

/** "Then, until 1977, four figures": its time goes on from the one before, or from when codes began. */
function sinceThen(period: SaidPeriod, { sentence }: Told, last: SaidSystem | undefined): SaidPeriod {
  const [link] = afterwards(sentence.text);
  const before = last && 'used' in last.own ? onePeriod(last.own.used) : undefined;
  if (period.form !== 'until' || !link || link.start > 2 || !before) return period;
  const from = last!.own.kind === 'stamped' ? before[0] : timeBeside(before, 'afterwards')?.[0];
  return from && from <= period.used[1]! ? { ...period, used: [from, period.used[1]] } : period;
}

function systemOf(
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
      : (readLayoutWords(text, examples, known?.units) ?? withSignsAdded(plain, examples, earlier));
  const isConfirmed = settled?.by === 'words' && settled.fits && settled.units.length > 0;
  if (group.some(({ assumed }) => assumed) && !isConfirmed) {
    const bare = group.map((one) => (one.assumed ? { ...one, examples: [], assumed: false } : one));
    return systemOf(bare, known, above, earlier, beside, last);
  }
  if (!settled) return { system: null, layout: null };
  const own = periodOf(group[0]!);
  const periods = own.length > 0 ? own : beside.length > 0 ? beside : above ? [above.period] : [];
  // Neither a period nor an example: words about codes in general.
  if (periods.length === 0 && examples.length === 0) return { system: null, layout: settled };
  const { backwards, ...used } = usedOf(periods.map((period) => sinceThen(period, group[0]!, last)));
  const shown = examples.length > 0 ? plainExamples(examples) : yearsShown(settled.layout, text);
  const system: SaidSystem = {
    own: { kind: 'code-system', ...used, layout: settled.layout, examples: shown },
    doubts: [
      backwards && 'backwards',
      !settled.fits && 'examples-disagree',
      settled.by === 'examples' && 'by-examples-only',
      examples.some(({ lookAlike }) => lookAlike) && 'look-alike',
    ],
    sentences: group.map(({ sentence }) => sentence),
  };
  return { system, layout: settled };
}
