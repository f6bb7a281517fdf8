import { plainName } from '../maker';
import type { Model, Run, Size } from '../maker/types';
import { type Strength, strengthOf } from '../source';
import { periodSpans, reachOfAbout, type Span, spansMeet, unionOf } from '../span';
import { exceptedSpans } from './exceptions';

const runsOf = ({ runs = [] }: Model): readonly Run[] => runs;

/** A run with a size. */
export type SizedRun = Run & { size: Size };
export const sizedRuns = (model: Model): SizedRun[] =>
  runsOf(model).filter((run): run is SizedRun => run.size !== undefined);

/** What an entry inside another names as its sources: its own, else those of the whole. */
const sourcesWithin = (run: Run, model: Model): readonly string[] => run.sources ?? model.sources ?? [];

interface ModelDates {
  spans: Span[];
  strength: Strength;
  sources: string[];
}

/** All years in which a model was made, in whatever size; null where a run does not say, for it may be of any year. */
export function datesOfModel(model: Model): ModelDates | null {
  const runs = runsOf(model);
  const all = runs.map(({ made }) => (made ? periodSpans(made) : []));
  const excepted = [model, ...runs].flatMap((entry) => exceptedSpans(entry, null));
  const spans = unionOf([...all.flat(), ...excepted]);
  const open = spans.some(({ from, to }) => from === null && to === null);
  if (runs.length === 0 || open || all.some((one) => one.length === 0)) return null;
  const strengths = runs.map((run) => strengthOf(run.strength || run.standing || run.exceptions ? run : model, 'soft'));
  const hard = strengthOf(model, 'hard') === 'hard' && strengths.every((one) => one === 'hard');
  return {
    spans,
    strength: hard ? 'hard' : 'soft',
    sources: [...new Set(runs.flatMap((run) => sourcesWithin(run, model)))],
  };
}

/** What tells the runs of a model apart: when the piece may be made, and the words that name it. */
export interface OfRun {
  dates: readonly Span[];
  words: readonly string[];
}

/**
 * The sizes that a piece of this model may have: of the run that its words name, else of those that were made at one of
 * its dates; all, where nothing tells or nothing fits, for a doubt needs more than a row that is missing.
 */
export function sizesThen(model: Model, { dates, words }: OfRun): SizedRun[] {
  const sized = sizedRuns(model);
  const said = words.map((one) => ` ${plainName(one)} `);
  const named = sized.filter(({ name }) => name && said.some((one) => one.includes(` ${plainName(name)} `)));
  if (named.length > 0) return named;
  const then = sized.filter(({ made }) => {
    const spans = made ? periodSpans(made).map(reachOfAbout) : [];
    return spans.length === 0 || dates.some((date) => spans.some((span) => spansMeet(reachOfAbout(date), span)));
  });
  return dates.length === 0 || then.length === 0 ? sized : then;
}

/** The sources of a size. */
export const sourcesOfSize = (run: Run, model: Model): string[] => [...sourcesWithin(run, model)];
