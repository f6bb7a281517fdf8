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

  it('keeps what a file has, adds behind it, and notes what no field holds', () => {
    const value = { format: 2, maker: 'Tessaro Vell', models: [{ name: 'Busta 28', note: 'mine' }] };
    const next = draftWith(value, ticked('en-table-models', 'en-table-carriers'));
    const models = next.models as { name: string; note?: string }[];
    expect(models.map(({ name }) => name)).toEqual(['Busta 28', 'Secchio', 'Postina 24', 'Cartella Grande']);
    expect(models[0]!.note).toContain('mine\n');
    expect(models[0]!.note).toContain('on a leather tab under the inner pocket');
    expect(value.models[0]!.note).toBe('mine');
  });
});
