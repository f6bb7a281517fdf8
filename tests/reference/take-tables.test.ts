import { expect, it } from 'vitest';
import type { Proposal } from '../../src/take/types';
import { takeHtml } from '../take-pages/score';
import { describeWithFixture } from './fixture';

/*
 * Published tables laid out as pages of each form come back as they stand: nothing lost, nothing turned, nothing added.
 */

const page = (title: string, body: string) =>
  `<!doctype html><html><head><title>${title}</title></head><body><h1>${title}</h1>${body}<p>Last changed in 2024.</p></body></html>`;
const row = (cells: readonly string[], tag = 'td') =>
  `<tr>${cells.map((cell) => `<${tag}>${cell}</${tag}>`).join('')}</tr>`;
const table = (header: readonly string[], rows: readonly string[][]) =>
  `<table>${row(header, 'th')}${rows.map((cells) => row(cells)).join('')}</table>`;

type Form = (head: readonly [string, string], rows: readonly [string, string][]) => string;
const forms: Record<string, Form> = {
  'a table': (head, rows) =>
    table(
      head,
      rows.map((cells) => [...cells]),
    ),
  'a table with its columns turned': ([first, second], rows) =>
    table(
      [second, first],
      rows.map(([a, b]) => [b, a]),
    ),
  'a table in two halves side by side': ([first, second], rows) => {
    const half = Math.ceil(rows.length / 2);
    const beside = rows.slice(0, half).map((cells, at) => [...cells, ...(rows[half + at] ?? ['', ''])]);
    return table([first, second, first, second], beside);
  },
  'a list': (_head, rows) => `<ul>${rows.map(([a, b]) => `<li>${a} = ${b}</li>`).join('')}</ul>`,
  'a list with its sides turned': (_head, rows) => `<ul>${rows.map(([a, b]) => `<li>${b}: ${a}</li>`).join('')}</ul>`,
  'a definition list': (_head, rows) => `<dl>${rows.map(([a, b]) => `<dt>${a}</dt><dd>${b}</dd>`).join('')}</dl>`,
  'text typed with blanks': (head, rows) => {
    const lines = [head, ...rows].map(([a, b]) => `${a.padEnd(24)}${b}`);
    return `<pre>${lines.join('\n')}</pre>`;
  },
  'text typed with bars': (head, rows) =>
    `<pre>${[head, ['---', '---'], ...rows].map(([a, b]) => `| ${a} | ${b} |`).join('\n')}</pre>`,
  'cells in a grid': (head, rows) =>
    `<div>${head.map((text) => `<div class="head">${text}</div>`).join('')}${rows
      .map(([a, b]) => `<div>${a}</div><div>${b}</div>`)
      .join('')}</div>`,
  'rows of other elements': (head, rows) =>
    `<section>${[head, ...rows].map(([a, b]) => `<div><span>${a}</span> <span>${b}</span></div>`).join('')}</section>`,
  'a table lying on its side': ([first, second], rows) =>
    `<table>${row([first, ...rows.map(([a]) => a)])}${row([second, ...rows.map(([, b]) => b)])}</table>`,
  'lines with dots between': (_head, rows) => `<p>${rows.map(([a, b]) => `${a} ........ ${b}`).join('<br>')}</p>`,
  'lines of a paragraph': (_head, rows) => `<p>${rows.map(([a, b]) => `${a}: ${b}`).join('<br>')}</p>`,
};

const letters = (found: readonly Proposal[]) =>
  found.flatMap((one) => (one.kind === 'year-letter' ? [`${one.letter} ${one.year}`] : [`not a letter: ${one.kind}`]));
const serials = (found: readonly Proposal[]) =>
  found.flatMap((one) => (one.kind === 'serial' ? [`${one.made[0]} ${one.first}`] : [`not a number: ${one.kind}`]));
const plants = (found: readonly Proposal[]) =>
  found.flatMap((one) => (one.kind === 'plant' ? [`${one.code} ${one.place}`] : [`not a plant: ${one.kind}`]));

interface Numbers {
  systems: { vin: { model_year: { table: Record<string, [number, number]> } } };
}
describeWithFixture<Numbers>(
  'model years of vehicles (49 CFR 565)',
  'reference/check_digit_systems.json',
  ({ systems }) => {
    const told = Object.entries(systems.vin.model_year.table);
    for (const [form, lay] of Object.entries(forms)) {
      it(`come back from ${form}, the first cycle`, () => {
        const rows = told.map(([letter, [year]]): [string, string] => [letter, String(year)]);
        const found = takeHtml(page('Model year letters', lay(['Letter', 'Model year'], rows)));
        expect(letters(found).sort()).toEqual(told.map(([letter, [year]]) => `${letter} ${year}`).sort());
        expect(found.filter(({ ticked }) => !ticked)).toEqual([]);
      });
    }
    it('come back from a table that gives both years of a letter', () => {
      const rows = told.map(([letter, years]) => [letter, years.join(', ')]);
      const found = takeHtml(page('Model year letters', table(['Letter', 'Model year'], rows)));
      expect(letters(found).sort()).toEqual(
        told.flatMap(([letter, years]) => years.map((year) => `${letter} ${year}`)).sort(),
      );
    });
    it('come back from a sentence for each ten', () => {
      const inLetters = told.filter(([letter]) => /[A-Z]/.test(letter));
      const tens = [inLetters.slice(0, 10), inLetters.slice(10)];
      const text = tens.map(
        (ten) => `<p>${ten.map(([letter, [year]]) => `${letter} stands for ${year}`).join(', ')}.</p>`,
      );
      const found = takeHtml(page('Model year letters', text.join('')));
      expect(letters(found)).toEqual(inLetters.map(([letter, [year]]) => `${letter} ${year}`));
    });
  },
);

interface Hallmarks {
  uniform: { rows: [number, string][] };
  offices: Record<string, { rows: [number, string, string][] }>;
}
describeWithFixture<Hallmarks>('date letters of hallmarks', 'reference/uk_hallmarks.json', ({ uniform, offices }) => {
  const all = {
    'every office since 1975': uniform.rows,
    ...Object.fromEntries(Object.entries(offices).map(([name, { rows }]) => [name, rows])),
  };
  for (const [name, told] of Object.entries(all))
    for (const [form, lay] of Object.entries(forms))
      it(`of ${name} come back from ${form}`, () => {
        const rows = told.map(([year, letter]): [string, string] => [String(year), letter]);
        const found = takeHtml(page('Date letters by year', lay(['Year', 'Date letter'], rows)));
        expect(letters(found).sort()).toEqual([...new Set(told.map(([year, letter]) => `${letter} ${year}`))].sort());
      });
});

interface Patents {
  utility: { year: number; first: number }[];
  design: { year: number; first: number }[];
}
describeWithFixture<Patents>(
  'first patent numbers of each year',
  'reference/us_patents.json',
  ({ utility, design }) => {
    for (const [kind, told] of Object.entries({ utility, design }))
      for (const [form, lay] of Object.entries(forms).filter(([name]) => !name.includes('sides turned')))
        for (const grouped of [false, true])
          it(`(${kind}${grouped ? ', in groups of three' : ''}) come back from ${form}`, () => {
            const written = (value: number) => (grouped ? value.toLocaleString('en') : String(value));
            const rows = told.map(({ year, first }): [string, string] => [String(year), written(first)]);
            const found = takeHtml(page('Patent numbers by year', lay(['Year', 'First number'], rows)));
            expect(serials(found).sort()).toEqual(told.map(({ year, first }) => `${year} ${first}`).sort());
          });
  },
);

interface Designs {
  rd_numbers: { rows: { year: number; first: number }[] };
  diamond: { year_letters_1842_1867: Record<string, number>; year_letters_1868_1883: Record<string, number> };
}
describeWithFixture<Designs>(
  'registered designs (The National Archives, research guide)',
  'reference/uk_registered_designs.json',
  ({ rd_numbers: { rows }, diamond }) => {
    for (const [form, lay] of Object.entries(forms).filter(([name]) => !name.includes('sides turned')))
      it(`first numbers of each year come back from ${form}`, () => {
        const told = rows.map(({ year, first }): [string, string] => [String(year), first.toLocaleString('en')]);
        const found = takeHtml(page('Registered numbers by year', lay(['Year', 'First number'], told)));
        expect(serials(found).sort()).toEqual(rows.map(({ year, first }) => `${year} ${first}`).sort());
      });
    for (const [cycle, told] of Object.entries({
      '1842 to 1867': Object.entries(diamond.year_letters_1842_1867),
      '1868 to 1883': Object.entries(diamond.year_letters_1868_1883),
    })) {
      const expected = told.map(([letter, year]) => `${letter} ${year}`).sort();
      for (const [form, lay] of Object.entries(forms))
        it(`year letters of the diamond mark, ${cycle}, come back from ${form}`, () => {
          const pairs = told.map(([letter, year]): [string, string] => [letter, String(year)]);
          expect(letters(takeHtml(page('Year letters', lay(['Letter', 'Year'], pairs)))).sort()).toEqual(expected);
        });
      it(`year letters of the diamond mark, ${cycle}, come back from sentences`, () => {
        const halves = [told.slice(0, 9), told.slice(9)].filter((half) => half.length >= 3);
        const text = halves.map(
          (half) => `<p>${half.map(([letter, year]) => `${letter} stands for ${year}`).join(', ')}.</p>`,
        );
        expect(letters(takeHtml(page('Year letters', text.join('')))).sort()).toEqual(
          halves
            .flat()
            .map(([letter, year]) => `${letter} ${year}`)
            .sort(),
        );
      });
    }
  },
);

interface Countries {
  current: [alpha2: string, alpha3: string, number: string, name: string][];
}
describeWithFixture<Countries>(
  'countries by their codes (ISO 3166-1), as plants',
  'reference/iso_3166.json',
  ({ current }) => {
    for (const [form, lay] of Object.entries(forms).filter(([name]) => name !== 'a list with its sides turned'))
      it(`come back from ${form}`, () => {
        const rows = current.map(([code, , , name]): [string, string] => [code, name]);
        const found = takeHtml(page('Factory codes', lay(['Code', 'Country'], rows)));
        expect(plants(found).sort()).toEqual(current.map(([code]) => `${code} ${code}`).sort());
      });
  },
);

interface Tyres {
  systems: { dot_tin: { examples: { code: string; means: string }[] }; iso6346: { examples: { full: string }[] } };
}
describeWithFixture<Tyres>(
  'week and year of tyres (49 CFR 574.5)',
  'reference/check_digit_systems.json',
  ({ systems }) => {
    const example = systems.dot_tin.examples.find(({ means }) => /^week \d+ of \d{4}$/.test(means))!;
    const told = [
      {
        kind: 'code-system',
        layout: [{ week: 2 }, { year: 2 }],
        examples: [{ code: example.code, reads: '2001-W25' }],
      },
    ];
    const bodies: Record<string, string> = {
      'a table': table(
        ['Format', 'Example', 'Meaning'],
        [['four digits, week then year', example.code, example.means]],
      ),
      'a notation': table(['Format', 'Example', 'Meaning'], [['WWYY', example.code, example.means]]),
      'a definition': `<dl><dt>since 2000</dt><dd>Four digits, the week and the year. Example: ${example.code} (${example.means})</dd></dl>`,
      'a sentence': `<p>Since 2000 the code has four digits, the week before the year: ${example.code} means ${example.means}.</p>`,
    };
    for (const [form, body] of Object.entries(bodies))
      it(`come back from ${form}`, () => {
        const found = takeHtml(page('Tyre date codes', body));
        expect(found).toHaveLength(1);
        expect(found).toMatchObject(told);
      });
  },
);
