import { describe, expect, it } from 'vitest';
import { titleOfFile } from '../../../src/take/name/file-title';
import type { Proposal } from '../../../src/take/types';
import { takeHtml } from '../../take-pages/score';

const page = (title: string, body: string): Proposal[] =>
  takeHtml(`<html><head><title>${title}</title></head><body><h1>${title}</h1>${body}</body></html>`);
const systemsOf = (found: readonly Proposal[]) =>
  found.flatMap((one) => (one.kind === 'code-system' ? [{ layout: one.layout, examples: one.examples }] : []));

describe('a code that one asks for and another explains', () => {
  it.each([
    ['A Quarwick bag, what year?', 'Mine says KR2274 inside.', 'KR is Keswick, week 22 of 1974.', 'KR2274', '1974-W22'],
    [
      'Eine Tasche von Ellmenau, welches Jahr?',
      'Innen steht LD0869.',
      'LD ist Landau, August 1969.',
      'LD0869',
      '1969-08',
    ],
    [
      'Un sac Peyrevault, quelle année ?',
      'Le mien porte MB1183.',
      'MB c’est Mauriac, novembre 1983.',
      'MB1183',
      '1983-11',
    ],
  ])('tells its form by what its letters are and its one date: %s', (title, asked, answer, code, reads) => {
    const found = page(title, `<p>${asked}</p><p>${answer}</p>`);
    expect(systemsOf(found).map(({ examples }) => examples)).toEqual([[{ code, reads }]]);
  });

  it('tells none where its letters are not named, or where two dates stand', () => {
    const title = 'A Quarwick bag, what year?';
    expect(systemsOf(page(title, '<p>Mine says KR2274 inside.</p><p>That is week 22 of 1974.</p>'))).toEqual([]);
    const both = '<p>Mine says KR2274.</p><p>KR is Keswick, week 22 of 1974 or week 4 of 1972.</p>';
    expect(systemsOf(page(title, both))).toEqual([]);
  });
});

describe('a sheet that was published as a page', () => {
  const row = (at: number, ...cells: string[]) =>
    `<tr><th>${at}</th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;

  it('is read without its own letters and numbers, and in the tables that blank rows part', () => {
    const sheet = `<table><tr><th></th><th>A</th><th>B</th><th>C</th></tr>${row(1, 'Code', 'Town', 'Years')}${row(2, 'KE', 'Kelso', '1961–1980')}${row(3, 'HA', 'Hawick', 'from 1974')}${row(4, '', '', '')}${row(5, 'Model', 'Size', '')}${row(6, 'Drover', '30 x 22 x 9 cm', '')}${row(7, 'Reiver', '36 x 26 x 11 cm', '')}</table>`;
    expect(page('Quarwick bags', sheet).map(({ kind }) => kind)).toEqual(['plant', 'plant', 'model', 'model']);
  });
});

describe('a title that is the name of a file', () => {
  it.each([
    ['quarwick_bags_v2.xlsx - Sheets', 'Quarwick Bags'],
    ['ellmenau-taschen-2019.pdf', 'Ellmenau Taschen'],
    ['Reading the codes – Quarwick', 'Reading the codes – Quarwick'],
  ])('is read as words: %s', (title, words) => {
    expect(titleOfFile(title)).toBe(words);
  });
});

describe('codes on a page that names a bag in passing', () => {
  it('are of something else where they are nobody’s', () => {
    const body =
      '<p>Each crate code has a letter, the week and the year, as in K2274 for week 22 of 1974.</p><p>A handbag fits into crate B.</p>';
    expect(page('How to read a crate code', body)).toEqual([]);
  });
});
