import { expect, it } from 'vitest';
import { problem } from '../../../src/problem';
import { whatIsShown } from '../../../src/ui/panel/what-is-shown';

const empty = problem('page-empty', 'page');

it.each([
  ['list', [], 'list'],
  ['article', [empty], 'article'],
  ['cut', [], 'cut'],
  ['none', [], 'none'],
  ['none', [empty], 'none'],
  ['none', [empty, problem('page-is-a-wanted-ad', 'page')], 'wanted'],
  ['none', [problem('page-is-picture', 'page')], 'picture'],
  ['none', [problem('page-is-pdf', 'page')], 'pdf'],
] as const)('a page of kind “%s” with %j is told as “%s”', (kind, problems, shown) => {
  expect(whatIsShown({ kind, problems: [...problems] })).toBe(shown);
});
