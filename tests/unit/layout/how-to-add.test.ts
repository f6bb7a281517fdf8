import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const text = readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8');
const recipes = [...text.matchAll(/^## (How to add [^\n]*)\n([\s\S]*?)(?=\n## )/gm)].map(
  ([, title, body]) => [title as string, body as string] as const,
);
const mostLines = 6;
const mostFiles = 5;

it('DEVELOPERS.md tells how to add whatever is added often', () => {
  expect(recipes.length).toBeGreaterThan(10);
});

it.each(recipes)('%s: in at most six lines and five files', (_title, body) => {
  expect(body.split('\n').filter((line) => line.trim() !== '').length).toBeLessThanOrEqual(mostLines);
  const files = new Set(Array.from(body.matchAll(/`([\w<>./ -]+\.(?:ts|json|md))`/g), ([, path]) => path));
  expect([...files].slice(mostFiles)).toEqual([]);
});
