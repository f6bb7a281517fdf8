import type { Ask, Check, Finding, Reason } from '../check';
import type { MakerFault, MakerProblem } from '../maker';
import type { Problem, Within } from '../problem';
import type { Question } from '../question';
import type { AskWords } from './asks-words';
import { asks as germanAsks } from './de/asks';
import { faultSorts as germanSorts } from './de/file-problems';
import { findings as germanFindings } from './de/findings';
import { problems as germanProblems } from './de/problems';
import { reasons as germanReasons } from './de/reasons';
import { asks as englishAsks } from './en/asks';
import { faultSorts as englishSorts } from './en/file-problems';
import { findings as englishFindings } from './en/findings';
import { problems as englishProblems } from './en/problems';
import { reasons as englishReasons } from './en/reasons';
import type { CheckWords, FindingCatalogue } from './finding-words';
import { type Kit, kitFor } from './kit';
import type { Language } from './language';
import type { ProblemWords, SayWithin } from './problem-words';
import { pseudo } from './pseudo';
import type { ReasonWords } from './reason-words';
import { sayExpected, sayFault } from './say-fault';

interface Catalogue {
  findings: FindingCatalogue;
  asks: AskWords;
  reasons: ReasonWords;
}
const english: Catalogue = { findings: englishFindings, asks: englishAsks, reasons: englishReasons };
const catalogues: Record<Language, Catalogue> = {
  en: english,
  de: { findings: germanFindings, asks: germanAsks, reasons: germanReasons },
  get 'en-XA'() {
    return pseudo(english) as Catalogue;
  },
};

/** A finding in one language. */
export interface FindingSaid {
  statement: string;
  basis: readonly string[];
  innocent: string;
  settles: string;
}

/** Finding, question and reason as they were stored fit the words by their names; what is not known is said so. */
const wordsOf = (check: string, language: Language): CheckWords<unknown> | undefined =>
  (catalogues[language].findings as Record<string, CheckWords<unknown>>)[check];

/** The sentences of a finding. */
export function sayFinding(
  { check, kind, data }: Pick<Finding, 'check' | 'kind' | 'data'>,
  language: Language,
): FindingSaid {
  const written = data.written as unknown as FindingSaid | undefined;
  if (written) return written;
  const words = wordsOf(check, language);
  if (!words) return { statement: check, basis: [check], innocent: '', settles: '' };
  const kit = kitFor(language);
  try {
    return {
      statement: words.statement(data, kit, kind),
      basis: words.basis?.(data, kit, kind) ?? [words.rule],
      innocent: words.explained?.(data, kit) ?? words.innocent,
      settles: words.settled?.(data, kit) ?? words.settles,
    };
  } catch {
    // Kept by another build, with other data: what the check is called is all that is sure of it.
    const { title, failureTitle, rule, innocent, settles } = words;
    return { statement: kind === 'agreement' ? title : failureTitle, basis: [rule], innocent, settles };
  }
}

/** What a check is called when it holds and when it does not, and its rule. */
export function describeCheck({ id }: Pick<Check, 'id'>, language: Language) {
  const words = wordsOf(id, language);
  if (!words) return { title: id, failureTitle: id, basis: id, innocent: '', settles: '' };
  const { title, failureTitle, rule, innocent, settles } = words;
  return { title, failureTitle, basis: rule, innocent, settles };
}

/** The sentence of a reason or a question of a case that was kept before the sentences stood with the languages. */
const asWritten = (id: string, { words }: Record<string, unknown>): string | null =>
  id === 'as-written' && typeof words === 'string' ? words : null;

/** Why a check has nothing to say. */
export function sayReason({ reason, data }: Reason, language: Language): string {
  type Words = (data: unknown, kit: Kit, say: SayWithin) => string;
  const words = (catalogues[language].reasons as Record<string, Words>)[reason];
  return (
    words?.(data, kitFor(language), (problem) => sayWithin(problem, language)) ?? asWritten(reason, data) ?? reason
  );
}

/** One thing to ask. */
export function sayAsk({ ask, data }: Ask, language: Language): string {
  const words = (catalogues[language].asks as Record<string, (data: unknown, kit: Kit) => string>)[ask];
  return words?.(data, kitFor(language)) ?? asWritten(ask, data) ?? ask;
}

/** A question: everything that is asked for one topic, each once; what another ask says with more behind it is said by that. */
export function sayQuestion({ asks }: Question, language: Language): string {
  const said = [...new Set(asks.map((ask) => sayAsk(ask, language)))];
  return said.filter((one) => !said.some((other) => other !== one && other.startsWith(one))).join(' ');
}

type Sorts = Record<string, readonly [what: string, remedy: string]>;
interface Failures {
  words: ProblemWords;
  sorts: Sorts;
}
const englishFailures: Failures = { words: englishProblems, sorts: englishSorts };
const failures: Record<Language, Failures> = {
  en: englishFailures,
  de: { words: germanProblems, sorts: germanSorts },
  get 'en-XA'() {
    return pseudo(englishFailures) as unknown as Failures;
  },
};

type Said = Pick<Problem, 'code' | 'data' | 'after' | 'what' | 'expected' | 'remedy'> &
  Partial<Pick<MakerProblem, 'fault' | 'line'>>;

/** A failure in one language: what went wrong, and what the user can do. */
export function sayProblem(problem: Said, language: Language): { what: string; remedy: string; expected?: string } {
  if (problem.fault) return sayFileFault(problem.code, problem.fault, problem.line, language);
  const said = sayAlone(problem, language);
  return problem.after ? { ...said, what: `${sayWithin(problem.after, language)}; ${said.what}` } : said;
}

/** What exactly is wrong with a maker file, behind the sort of it where a language is not that of the file's own fields. */
function sayFileFault(code: string, fault: MakerFault, line: number | undefined, language: Language) {
  const own = sayFault(fault, line, language);
  const expected = sayExpected(fault, language);
  const { sorts } = failures[language];
  const [sort = code, remedy = ''] = sorts[code] ?? sorts['maker-file-value'] ?? [];
  return { what: language === 'de' ? `${sort} (${own})` : own, remedy, ...(expected ? { expected } : {}) };
}

type Line = string | ((data: unknown, kit: Kit, say: SayWithin) => string);

/**
 * By its code and data. What an older record or the command line wrote about it stands in English where the code's
 * sentence needs data that was not kept; a code that is not known names itself.
 */
function sayAlone({ code, data, what, expected, remedy }: Said, language: Language) {
  const written = { what: what ?? code, remedy: remedy ?? '', ...(expected === undefined ? {} : { expected }) };
  const words = (failures[language].words as Record<string, readonly [Line, Line] | undefined>)[code];
  if (!words || (typeof words[0] === 'function' && data === undefined && what !== undefined)) return written;
  const line = (one: Line) =>
    typeof one === 'string' ? one : one(data, kitFor(language), (within) => sayWithin(within, language));
  try {
    return { what: line(words[0]), remedy: line(words[1]) };
  } catch {
    return written;
  }
}

/** A failure within a sentence; former builds kept the sentence itself, in English. */
function sayWithin(problem: Within | string, language: Language): string {
  if (typeof problem === 'string') return problem;
  return sayAlone(problem as Said, language).what;
}

/** What a check holds, quoted, as a name for it in a list. */
export const nameOfCheck = (id: string, language: Language): string =>
  kitFor(language).quote(wordsOf(id, language)?.title ?? id.replaceAll('-', ' '));
