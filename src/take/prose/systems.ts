import { codeShown, exactDates, isShortCode, plainExamples } from '../said/example';
import type { SaidLayout } from '../said/layout-words';
import { timeFrom } from '../said/one-period';
import { usedOf } from '../said/period';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';
import type { SaidSystem, Section } from './said-system';
import type { Sentence } from './sentences';
import { dateOfShown, exampleShown, formOfShown } from './shown-code';
import { changedBy, describedAround, exampleOf, systemOf, underHeading } from './system-form';
import { behindOf, periodAfter, periodBeside, timeAlone } from './system-time';
import { look, type Told } from './told-sentence';

const letterWords = tellingFinder('letters');

/**
 * Code systems that a paragraph's sentences tell, and codes whose date it tells without a system. `earlier` is the form that
 * paragraphs before told last (`ahead` with its time), which "then a letter was put before it" goes on from; the form told last is handed back.
 */
export function systemsIn(
  sentences: readonly Sentence[],
  day: string,
  above: Section | null = null,
  earlier: SaidLayout | null = null,
  shown: string | null = null,
  open: SaidLayout | null = null,
  ahead: SaidSystem | undefined = undefined,
): { found: SaidSystem[]; known: SaidLayout | null; pending: SaidLayout | null } {
  const told = withShown(
    sentences.flatMap(clausesOf).map((sentence) => look(sentence, day)),
    day,
    shown,
  );
  const answer = answerTo(shown, told, day);
  if (answer) return { found: [answer.system], known: answer.layout, pending: open };
  const found: SaidSystem[] = [];
  let known: SaidLayout | null = null;
  let pending = open;
  for (let at = 0; at < told.length; at += 1) {
    const here = told[at]!;
    if (here.noCode && here.periods.some(({ form }) => form === 'until')) {
      found.push(stampedFrom(here));
      continue;
    }
    const described = describedAround(told, at, found.length === 0);
    if (described) {
      found.push(described.system, ...loose(described.rest));
      known = described.layout;
      at = described.last;
      continue;
    }
    const after = periodAfter(here, told[at - 1], found.at(-1) ?? ahead) ?? [];
    const time = after.length > 0 ? after : periodBeside(undefined, behindOf(told, at));
    // "The letters come before the figures, whose order stayed. UB8912 is of week 12 of 1989."
    const shownNext = exampleBehind(here, told[at + 1]);
    const withNext: ReturnType<typeof changedBy> = shownNext ? changedBy(shownNext, known ?? earlier, time) : null;
    const changed: ReturnType<typeof changedBy> =
      withNext ?? (here.counts === 0 ? changedBy(here, known ?? earlier, time) : null);
    if (changed) {
      found.push(changed.system);
      known = changed.layout;
      if (withNext) at += 1;
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
      periodAfter(told[at]!, told[at - 1], found.at(-1) ?? ahead) ??
      periodBeside(told[at - 1], behindOf(told, last));
    const { system, layout, rest } = systemOf(group, known, above, known ?? earlier, beside, found.at(-1) ?? ahead);
    if (system) found.push(system, ...loose(rest ? [{ ...group.at(-1)!, examples: rest }] : []));
    else found.push(...loose(group));
    pending = system === null && layout?.by === 'words' ? layout : null;
    known = layout ?? known;
    at = last;
  }
  return { found, known: known ?? earlier, pending };
}

/** A sentence without an example and without counts, with the one that the next sentence is of. */
function exampleBehind(here: Told, next: Told | undefined): Told | null {
  const isBare = here.counts === 0 && here.examples.length === 0;
  if (!isBare || !next || next.examples.length === 0 || next.periods.length > 0 || next.counts > 0 || next.noCode)
    return null;
  return { ...here, examples: next.examples.map((one) => ({ ...one, start: 0, end: 0 })) };
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
  const example = exampleShown(code, date.reads);
  return told.map((one, index) => (index === at ? { ...one, examples: [example], assumed: true } : one));
}

/** "SN is Sneek, week 30 of 1981": an answer that names what the letters of the code asked for are, and its date, tells its form. */
function answerTo(
  code: string | null,
  told: readonly Told[],
  day: string,
): { system: SaidSystem; layout: SaidLayout } | null {
  const isOther = ({ examples, describes, counts, sentence }: Told) =>
    examples.length > 0 || describes || counts > 0 || codeShown(sentence.text, day) !== null;
  if (code === null || told.some(isOther)) return null;
  const sentences = told.map(({ sentence }) => sentence);
  const reads = dateOfShown(sentences, code, day);
  const example = reads === null ? null : exampleShown(code, reads);
  const layout = example && formOfShown(example, sentences.map(({ text }) => text).join(' '));
  if (!example || !layout) return null;
  const times = told.flatMap((one) => timeAlone(one) ?? []);
  const { backwards, ...used } = usedOf(times.length === 1 ? times : []);
  const own = { kind: 'code-system' as const, ...used, layout: layout.layout, examples: plainExamples([example]) };
  return { system: { own, doubts: [backwards && 'backwards', example.lookAlike && 'look-alike'], sentences }, layout };
}

const loose = (group: readonly Told[]): SaidSystem[] =>
  group.flatMap(({ sentence, examples, assumed }) =>
    (assumed ? [] : examples.filter(({ code }) => !isShortCode(code))).map(({ code, reads, lookAlike }) => ({
      own: { kind: 'example' as const, code, reads },
      doubts: [lookAlike && 'look-alike'],
      sentences: [sentence],
    })),
  );

function stampedFrom({ sentence, periods }: Told): SaidSystem {
  const until = periods.find(({ form }) => form === 'until')!;
  return { own: { kind: 'stamped', ...timeFrom(until.used, until.about)! }, doubts: [], sentences: [sentence] };
}
