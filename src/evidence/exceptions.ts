import { plainName } from '../maker';
import type { Entry } from '../maker/types';
import { periodSpans, type Span } from '../span';

type WithExceptions = Pick<Entry, 'exceptions'>;

const isAmong = (models: readonly string[], named: readonly string[]): boolean =>
  models.some((model) => named.some((name) => plainName(model) === plainName(name)));

/** Whether an entry is of what is named: of every model, or of one of these. */
export const isOfModel = ({ models }: { models?: readonly string[] | undefined }, named: readonly string[]): boolean =>
  !models?.length || isAmong(models, named);

/** Whether an entry makes an exception of what is named, in all years. */
export const isExcepted = ({ exceptions = [] }: WithExceptions, named: readonly string[]): boolean =>
  exceptions.some(({ models, used }) => models !== undefined && !used && isAmong(models, named));

/**
 * Years in which an entry makes an exception. Those of single models count where one of them is named; where nothing is
 * known of models (`named` null) all of them do, for a doubt needs more than a model that nobody named.
 */
export const exceptedSpans = ({ exceptions = [] }: WithExceptions, named: readonly string[] | null): Span[] =>
  exceptions.flatMap(({ models, used }) =>
    used && (!models || named === null || isAmong(models, named)) ? periodSpans(used) : [],
  );
