import type { Listing } from '../../listing/types';
import type { strings } from '../../words';

/** What a tab shows in place of a listing, by what the panel says of it. */
type Shown = keyof typeof strings.notListing;

const byProblem: Readonly<Record<string, Shown>> = {
  'page-is-picture': 'picture',
  'page-is-pdf': 'pdf',
  'page-is-a-wanted-ad': 'wanted',
};

export function whatIsShown({ kind, problems }: Pick<Listing, 'kind' | 'problems'>): Shown {
  if (kind === 'list' || kind === 'article' || kind === 'cut') return kind;
  return problems.flatMap(({ code }) => byProblem[code] ?? [])[0] ?? 'none';
}
