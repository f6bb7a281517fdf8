import type { Ask, Check, Finding, Reason } from '../check';
import type { MakerProblem } from '../maker';
import type { Problem } from '../problem';
import type { Question } from '../question';
import type { AskWords } from './asks-words';
import { asks as germanAsks } from './de/asks';
import { findings as germanFindings } from './de/findings';
import { problems as germanProblems } from './de/problems';
import { reasons as germanReasons } from './de/reasons';
import { asks as englishAsks } from './en/asks';
import { findings as englishFindings } from './en/findings';
import { reasons as englishReasons } from './en/reasons';
import type { CheckWords, FindingCatalogue } from './finding-words';
import { type Kit, kitFor } from './kit';
import type { Language } from './language';
import type { ProblemWords } from './problem-words';
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
  const words = (catalogues[language].reasons as Record<string, (data: unknown, kit: Kit) => string>)[reason];
  return words?.(data, kitFor(language)) ?? asWritten(reason, data) ?? reason;
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

/** Failures are written in English where they happen; other languages have them by their code. */
const failures: Partial<Record<Language, ProblemWords>> = { de: germanProblems };

/**
 * A failure in one language: what went wrong, and what the user can do. Of a maker file, what exactly is wrong is said in
 * place of the sort of it, and in other languages behind it.
 */
export function sayProblem(
  problem: Pick<Problem, 'code' | 'what' | 'remedy'> & Partial<Pick<MakerProblem, 'fault' | 'line'>>,
  language: Language,
): { what: string; remedy: string; expected?: string } {
  const { code, what, remedy, fault, line } = problem;
  const own = fault ? sayFault(fault, line, language) : what;
  const instead = fault && sayExpected(fault, language);
  const expected = instead ? { expected: instead } : {};
  const words = failures[language]?.[code];
  if (!words) return { what: own, remedy, ...expected };
  const [said, todo, detail] = words;
  return { what: fault || detail ? `${said} (${own})` : said, remedy: todo, ...expected };
}

/** What a check holds, quoted, as a name for it in a list. */
export const nameOfCheck = (id: string, language: Language): string =>
  kitFor(language).quote(wordsOf(id, language)?.title ?? id.replaceAll('-', ' '));
