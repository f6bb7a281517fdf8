import { foldWords } from '../../text';
import { andWords } from '../and-words';
import { asFolded } from '../said/as-folded';
import { confirmedLayout } from '../said/confirmed';
import { isDateUnit, unitsOfLayout } from '../said/layout';
import { onePeriod, timeBeside } from '../said/one-period';
import { type Used, usedOf } from '../said/period';
import { unitsNamed } from '../said/unit-words';
import { withoutPeriods } from '../said/used-text';
import type { Doubt, Proposal, TakenPeriod } from '../types';
import { tellingFinder } from '../words';
import type { Sentence } from './sentences';

type System = Extract<Proposal, { kind: 'code-system' }>;
type Example = Extract<Proposal, { kind: 'example' }>;

/** In which order codes were written in some time, told without an example: "until 1985 workshop, month and year". */
export interface SaidOrder {
  units: string[];
  used: TakenPeriod;
  backwards: boolean;
  sentence: Sentence;
}

const links = tellingFinder('afterwards');
const digits = tellingFinder('digits', 'serial');
const clauses = new RegExp(`(?:;|,(?=\\s(?:${andWords})?\\s?\\p{L}{3,14}\\s))\\s`, 'gu');
/** A longer sentence is a muddle. */
const longest = 400;

/** The orders that a sentence tells with their times, each in a clause of its own. */
export function ordersIn(sentence: Sentence): SaidOrder[] {
  const { text } = sentence;
  if (text.length > longest || digits(text).length > 0) return [];
  const found: SaidOrder[] = [];
  for (const clause of clausesOf(text)) {
    const { text: plain, periods } = withoutPeriods(clause);
    const units = [...new Set(unitsNamed(foldWords(plain).text).map(({ value }) => value))];
    if (units.filter(isDateUnit).length < 2) continue;
    const told = periods.filter(({ form }) => form !== 'year');
    const own: Used = usedOf(told);
    const linked = links(asFolded(foldWords(plain).text)).length > 0;
    const used =
      told.length === 0 && linked
        ? timeBeside(found.at(-1)?.used, 'afterwards')
        : told.length === 1 && onePeriod(own.used);
    if (used) found.push({ units, used, backwards: own.backwards, sentence });
  }
  return found;
}

/** A sentence by its clauses, where a comma or a semicolon ends each before the next names its own time. */
function clausesOf(text: string): string[] {
  const cuts = [...text.matchAll(clauses)].filter(({ index, 0: joint }) => {
    const behind = text.slice(index + joint.length, index + joint.length + 24);
    return withoutPeriods(behind).periods.some(({ start }) => start <= 4) || (links(behind)[0]?.start ?? 9) <= 4;
  });
  const starts = [0, ...cuts.map(({ index, 0: joint }) => index + joint.length)];
  return starts.map((start, at) => text.slice(start, cuts[at]?.index ?? text.length));
}

/** An order with what makes a proposal of it, once its form is known. */
export interface OpenOrder extends SaidOrder {
  maker: string | null;
  propose: (own: Pick<System, 'layout' | 'examples' | 'used'>, doubts: (Doubt | false)[]) => Proposal;
}

/** More of either than a page tells of makers: each stays as it stands. */
const mostOrders = 12;
const mostExamples = 60;

/** Orders told without an example, with the dated codes of their time that the page shows elsewhere; one that has none tells no form. */
export function withOrders(found: readonly Proposal[], orders: readonly OpenOrder[]): Proposal[] {
  const loose = found.filter((one): one is Example => one.kind === 'example' && one.doubts.length === 0);
  if (orders.length === 0 || orders.length > mostOrders || loose.length > mostExamples) return [...found];
  const taken = new Set<Proposal>();
  const told = orders.flatMap((order): Proposal[] => {
    const [from, to] = order.used;
    const own = loose.filter(
      ({ maker, reads }) =>
        maker === order.maker && reads.slice(0, 4) >= (from ?? '0') && reads.slice(0, 4) <= (to ?? '9999'),
    );
    const layout = own.length > 0 ? confirmedLayout(own, order.units.filter(isDateUnit), false) : null;
    if (!layout || !isInOrder(layout, order.units)) return [];
    for (const one of own) taken.add(one);
    const examples = own.map(({ code, reads }) => ({ code, reads }));
    return [order.propose({ layout, examples, used: order.used }, [order.backwards && 'backwards'])];
  });
  return [...found.filter((one) => !taken.has(one)), ...told];
}

/** Whether a form writes its units in the order told, its workshop where the text names one. */
function isInOrder(layout: System['layout'], units: readonly string[]): boolean {
  const told = units.filter((unit) => unit === 'plant' || isDateUnit(unit));
  const kinds = layout.flatMap((slot) => Object.keys(slot)).filter((kind) => kind === 'plant' || isDateUnit(kind));
  return told.includes('plant') ? kinds.join() === told.join() : unitsOfLayout(layout).join() === told.join();
}
