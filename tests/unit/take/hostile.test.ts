import { describe, expect, it } from 'vitest';
import { countWork } from '../../growth/count-work';
import { takeHtml } from '../../take-pages/score';

const page = (body: string, title = 'Ondrasse workshop codes') =>
  `<html><head><title>${title}</title></head><body><h1>${title}</h1>${body}</body></html>`;
const row = (cells: string[]) => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
const head = '<tr><th>Code</th><th>Country</th><th>Years</th></tr>';
const plants = (html: string) => takeHtml(html).flatMap((one) => (one.kind === 'plant' ? [one] : []));

describe('pages that mean harm, or are only badly made', () => {
  it('with cells that say they fill 100,000 places stay small', () => {
    const table = `<table>${head}<tr><td colspan="100000" rowspan="100000">KV</td><td>Belgium</td></tr>${row(['HJ', 'France', '1986'])}</table>`;
    expect(takeHtml(page(table)).length).toBeLessThan(5);
  });

  it('nested 20,000 deep are read to their end', () => {
    const deep = `${'<div>'.repeat(20_000)}KV stands for Belgium.${'</div>'.repeat(20_000)}`;
    expect(plants(page(deep)).map(({ code, place }) => [code, place])).toEqual([['KV', 'BE']]);
  });

  it('whose forms hide their children behind fields of those names are read all the same', () => {
    const table = `<form><input name="firstChild"><input name="getAttribute"><table>${head}${row(['KV', 'Belgium', '1982–2003'])}</table></form>`;
    expect(plants(page(table)).map(({ code }) => code)).toEqual(['KV']);
  });

  it('that hide words from people do not tell them', () => {
    const hidden = `<p style="display:none">ZZ stands for Spain.</p><p hidden>ZY stands for Spain.</p><template><p>ZX stands for Spain.</p></template>`;
    expect(plants(page(`${hidden}<p>KV stands for Belgium.</p>`)).map(({ code }) => code)).toEqual(['KV']);
  });

  it('with letters that only look like Latin ones are read, and left unticked', () => {
    const [plant] = plants(page(`<table>${head}${row(['КV', 'Belgium', '1982–2003'])}</table>`));
    expect(plant).toMatchObject({ code: 'KV', doubts: ['look-alike'], ticked: false });
  });

  it('with such letters in a code under a heading that writes its form are read, and left unticked', () => {
    const html = page(
      '<h2>1980 to 1988: LLMMYY</h2><p>\u041aV0388 means March 1988.</p><p>ZV0486 means April 1986.</p>',
    );
    expect(takeHtml(html).map(({ doubts, ticked }) => ({ doubts, ticked }))).toEqual([
      { doubts: ['look-alike'], ticked: false },
      { doubts: [], ticked: true },
    ]);
  });

  it('whose ranges are written backwards are turned, and left unticked', () => {
    const [plant] = plants(page(`<table>${head}${row(['KV', 'Belgium', '2003–1982'])}</table>`));
    expect(plant).toMatchObject({ used: ['1982', '2003'], doubts: ['backwards'], ticked: false });
  });

  it('with thousands of dated codes, and of years in which codes begin, take no more than their length', () => {
    const lines = (count: number) =>
      page(
        Array.from(
          { length: count },
          (_, at) =>
            `<p>${String(1000 + at)}KV is May ${1950 + (at % 40)}.</p><p>Bags carry a code since ${1950 + (at % 40)}.</p>`,
        ).join(''),
      );
    const [small, large] = [lines(200), lines(2_000)].map((html) => countWork(() => takeHtml(html)));
    expect(large! / small!).toBeLessThan(15);
  }, 60_000);

  it('with 3,000 rows that contradict each other mark them without comparing each with all', () => {
    const rows = (count: number) =>
      page(
        `<table>${head}${Array.from({ length: count }, (_, at) => row(['KV', 'Belgium', `${1900 + (at % 90)}–1995`])).join('')}</table>`,
      );
    const [small, large] = [rows(300), rows(3_000)].map((html) => countWork(() => takeHtml(html)));
    expect(large! / small!).toBeLessThan(15);
    expect(plants(rows(300)).every(({ doubts }) => doubts.includes('contradicted'))).toBe(true);
  });

  it('of five megabytes are read to their end, with what no reader sees left out', () => {
    const talk = '<p>The bag came in several colours, and its lining was a matter of taste in 1985.</p>'.repeat(8_000);
    const rows = Array.from({ length: 600 }, (_, at) =>
      row([
        `${String.fromCharCode(65 + (at % 26))}${String.fromCharCode(65 + Math.floor(at / 26))}`,
        'Belgium',
        '1982',
      ]),
    );
    const unseen = `<script>${'x = "KX stands for Spain"; '.repeat(100_000)}</script><div hidden>${'KY stands for Spain. '.repeat(80_000)}</div>`;
    const html = page(`${unseen}${talk}<table>${head}${rows.join('')}</table>`);
    expect(html.length).toBeGreaterThan(5_000_000);
    const found = plants(html);
    expect(found).toHaveLength(600);
    expect(found.filter(({ place }) => place !== 'BE')).toEqual([]);
  }, 120_000);

  it('of eight times the length cost eight times the work', () => {
    const long = (times: number) =>
      page(
        Array.from(
          { length: times },
          (_, at) =>
            `<p>The letters K${String.fromCharCode(65 + (at % 26))} stand for Belgium, from 1982 to 2003. The Busta 28 (28 × 18 × 8 cm) came in 1990.</p>` +
            `<ul><li>HJ – Lyon, France (1986–today)</li></ul><table>${head}${row(['KV', 'Belgium', '1982–2003'])}</table>`,
        ).join(''),
      );
    const [small, large] = [long(60), long(480)];
    takeHtml(small);
    expect(countWork(() => takeHtml(large)) / countWork(() => takeHtml(small))).toBeLessThan(12);
  });
});
