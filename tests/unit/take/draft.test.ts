import { describe, expect, it } from 'vitest';
import { decodeExactly } from '../../../src/code';
import { draftOf, inspectDraft } from '../../../src/maker';
import { draftWith } from '../../../src/take';
import { pageHtml, takeHtml } from '../../take-pages/score';

const ticked = (...pages: string[]) => pages.flatMap((page) => takeHtml(pageHtml(page))).filter((one) => one.ticked);
const fileFrom = (maker: string, ...pages: string[]) => {
  const inspected = inspectDraft(draftOf(draftWith({ format: 2, maker }, ticked(...pages))));
  expect(inspected.problems).toEqual([]);
  return inspected.file!;
};

describe('a draft of what a page told', () => {
  it('of a table of plants and one of systems is a whole file that reads the codes', () => {
    const file = fileFrom('Ondrasse', 'en-table-plants', 'en-table-systems');
    expect(file.plants.map(({ code }) => code)).toEqual(['KV', 'LD', 'HJ', 'YD', 'ZM', 'PX']);
    expect(file.codeSystems.map(({ id }) => id)).toEqual(['taken', 'taken-2', 'taken-3', 'taken-4', 'taken-5']);
    const [reading] = decodeExactly('HJ1929', file);
    expect([reading?.span?.from, reading?.places]).toEqual(['1999-12-01', ['FR']]);
    expect(file.plants[0]!.sources).toEqual([
      'https://leather-notes.example/codes, 2026-11-29: “KV | Belgium | 1982–2003”',
    ]);
  });

  it('makes letters by year one cycle, and numbers by year one table', () => {
    const letters = fileFrom('Calderwick & Rook', 'de-table-jahresbuchstaben');
    expect(decodeExactly('J', letters).map(({ span }) => span?.from)).toEqual(['1979-01-01']);
    const numbers = fileFrom('Calderwick & Rook', 'en-table-numbers');
    expect(decodeExactly('7904', numbers).map(({ span }) => span?.from)).toEqual(['1949-01-01']);
  });

  it('leaves away what the page does not say, so that the editor asks for it', () => {
    const value = draftWith({ format: 2, maker: 'Ondrasse' }, ticked('en-table-two-sections').slice(0, 1));
    expect(value.plants).toEqual([{ code: 'KV', place: 'BE', sources: [expect.any(String)] }]);
    expect(inspectDraft(draftOf(value)).problems.map(({ where }) => where)).toEqual(['plants[0].used']);
  });

  it('gives letters that only an example has a plant of an unknown place', () => {
    const plants = ticked('en-table-plants').filter((one) => one.kind === 'plant' && one.code === 'HJ');
    const value = draftWith({ format: 2, maker: 'Ondrasse' }, [...plants, ...ticked('en-table-systems')]);
    const { file, problems } = inspectDraft(draftOf(value));
    expect(problems).toEqual([]);
    expect(file!.plants.map(({ code, place }) => [code, place])).toEqual([
      ['HJ', 'FR'],
      ['KV', 'ZZ'],
      ['LD', 'ZZ'],
    ]);
  });

  it('keeps what a file has and adds behind it', () => {
    const value = { format: 2, maker: 'Tessaro Vell', models: [{ name: 'Busta 28', note: 'mine' }] };
    const next = draftWith(value, ticked('en-table-models', 'en-table-carriers'));
    const models = next.models as { name: string; note?: string }[];
    expect(models.map(({ name }) => name)).toEqual(['Busta 28', 'Secchio', 'Postina 24', 'Cartella Grande']);
    expect(models[0]).toEqual({ name: 'Busta 28', note: 'mine' });
  });

  it('has where the code sits by model and period as entries of their own, which a listing is asked by', () => {
    const file = fileFrom('Tessaro Vell', 'en-table-carriers');
    expect(file.carriers.map(({ sources: _, ...carrier }) => carrier)).toEqual([
      { kind: 'tab', where: 'on a leather tab under the inner pocket', models: ['Busta 28'], used: ['1990', '2004'] },
      { kind: 'sticker', where: 'on a white sticker inside the pocket', models: ['Busta 28'], used: ['2005', '2011'] },
      { kind: 'stamp', where: 'stamped into the base, inside', models: ['Secchio'] },
      { kind: 'stamp', where: 'behind the lock plate', models: ['Cartella Grande'] },
    ]);
    expect(file.carriers[0]!.sources).toEqual([
      'https://leather-notes.example/codes, 2026-11-29: “Busta 28 | on a leather tab under the inner pocket | 1990–2004”',
    ]);
    expect(file.note).toBeUndefined();
  });

  it('leaves it to the writer what sort of label a page means', () => {
    const [carrier] = takeHtml(
      '<h1>Wo sitzt der Code bei Quisthof?</h1><ul><li>Beutel: im Innenfach auf einem Etikett</li></ul>',
    );
    const value = draftWith({ format: 2, maker: 'Quisthof' }, carrier ? [carrier] : []);
    expect(inspectDraft(draftOf(value)).problems.map(({ where }) => where)).toEqual(['carriers[0].kind']);
  });

  it('has prices by model, condition and year, as many as the page tells', () => {
    const file = fileFrom('Ondrasse', 'en-table-prices');
    expect(file.prices).toHaveLength(8);
    expect(file.prices[0]).toEqual({
      model: 'Carryall 25',
      condition: 'new',
      least: 390,
      most: 390,
      currency: 'EUR',
      year: 2002,
      sources: [expect.stringContaining('Carryall 25')],
    });
    const used = takeHtml(
      '<h1>Used prices of the Ondrasse bags</h1><table><tr><th>Model</th><th>2010</th><th>2018</th></tr><tr><td>Carryall 25</td><td>€310</td><td>€350</td></tr><tr><td>Carryall 30</td><td>€350</td><td>€390</td></tr></table>',
    );
    expect(used.map((one) => one.kind === 'price' && one.condition)).toEqual(['used', 'used', 'used', 'used']);
  });

  it('marks what the page takes back or doubts, when it is ticked all the same', () => {
    const plants = takeHtml(pageHtml('en-prose-withdrawn')).filter(({ kind }) => kind === 'plant');
    const value = draftWith({ format: 2, maker: 'Barrowmere' }, plants);
    expect(
      (value.plants as { code: string; standing?: object }[]).map(({ code, standing }) => [code, standing]),
    ).toEqual([
      ['BA', undefined],
      ['MT', { is: 'withdrawn' }],
      ['FI', { is: 'withdrawn' }],
      ['FI', undefined],
      ['BK', { is: 'disputed' }],
    ]);
  });

  it('gives one entry several sources when several pages say the same', () => {
    const [kv] = ticked('en-table-plants');
    const other = { ...kv!, source: { address: 'https://other-notes.example/', day: '2026-11-30' } };
    const once = draftWith({ format: 2, maker: 'Ondrasse' }, [kv!]);
    const twice = draftWith(draftWith(once, [other]), [other]);
    expect(twice.plants).toHaveLength(1);
    expect((twice.plants as { sources: string[] }[])[0]!.sources).toEqual([
      'https://leather-notes.example/codes, 2026-11-29: “KV | Belgium | 1982–2003”',
      'https://other-notes.example/, 2026-11-30: “KV | Belgium | 1982–2003”',
    ]);
  });

  it('says of a beginning that the page does not tell that it is unknown, and of a hedged end that it is about', () => {
    const [told] = takeHtml(
      '<h1>Ondrasse factory codes</h1><table><tr><th>Code</th><th>Country</th><th>Years</th></tr><tr><td>KV</td><td>Belgium</td><td>until about 1998</td></tr><tr><td>HJ</td><td>France</td><td>1986–2003</td></tr></table>',
    );
    const value = draftWith({ format: 2, maker: 'Ondrasse' }, told ? [told] : []);
    expect((value.plants as { used: unknown }[])[0]!.used).toEqual(['unknown', 'about 1998']);
    expect(inspectDraft(draftOf(value)).problems).toEqual([]);
  });
});
