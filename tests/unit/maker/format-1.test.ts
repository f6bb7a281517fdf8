import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { decodeText, readsOf } from '../../../src/code';
import {
  builtInMakers,
  currentDraft,
  type Draft,
  draftSchema,
  exportText,
  inCurrentFormat,
  inspectDraft,
  openText,
  parseMakerFile,
  readMakerFileText,
  undoStep,
} from '../../../src/maker';
import { sayProblem } from '../../../src/words';

const folder = new URL('format-1/', import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
const textOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const fileOf = (name: string) => {
  const result = readMakerFileText(textOf(name));
  if (!result.ok) throw new Error(result.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
  return result.file;
};

/** Everything that somebody wrote: each text, number and truth value of a file, as often as it stands there. */
function written(value: unknown): unknown[] {
  if (Array.isArray(value)) return value.flatMap(written);
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([field, inside]) => (field === 'format' ? [] : written(inside)));
  return value === null || value === '' ? [] : [value];
}

describe.each(names)('a file of the first format (%s)', (name) => {
  it('is read as one of today, which has everything that it had', () => {
    const file = fileOf(name);
    expect(file.format).toBe(2);
    const left = written(file);
    const lost = written(JSON.parse(textOf(name))).filter((one) => {
      const at = left.indexOf(one);
      if (at >= 0) left.splice(at, 1);
      return at < 0;
    });
    // Said of two entries that are one now: the name in capitals is an alias, the part that both name stands once.
    const once = name === 'everything.json' ? ['lock'] : [];
    // A place that several systems share is one entry now.
    const places = lost.filter((one) => file.carriers.some(({ where }) => where === one));
    expect(lost.filter((one) => !places.includes(one))).toEqual(once);
  });

  it('is one of today to the last field once it was exported', () => {
    const file = fileOf(name);
    expect(readMakerFileText(JSON.stringify(file))).toEqual({ ok: true, file });
    expect(inCurrentFormat(file)).toBe(file);
  });
});

test('the built-in files of today are those of the first format', () => {
  for (const maker of builtInMakers) {
    const former = names.map(fileOf).find((file) => file.maker === maker.maker);
    expect(former).toEqual(maker);
  }
});

test('years and sizes become runs, those of one name runs of one model; where stamps sit and least prices have entries of their own', () => {
  const file = fileOf('everything.json');
  const size = { width: 30, height: 21, depth: 17, unit: 'cm', tolerance: 1 };
  expect(file.models).toEqual([
    {
      name: 'Tote 30',
      aliases: ['shopper 30', 'TOTE 30', 'tote'],
      runs: [
        { made: ['1971', '1985'], size, sources: ['catalogue of 1975'], note: 'small' },
        {
          made: ['1986', null],
          size: { width: 32, unit: 'cm', tolerance: 0.5 },
          sources: ['catalogue of 1986'],
          note: 'larger',
        },
      ],
      parts: ['body', 'lock', 'zip'],
    },
    { name: 'Purse', sources: ['a leaflet'] },
  ]);
  expect(file.carriers).toEqual([
    { kind: 'stamp', where: 'inside, on the pocket', systems: ['early', 'numbers'] },
    { kind: 'stamp', where: 'under the flap', systems: ['turned'] },
  ]);
  expect(file.prices).toEqual([
    { condition: 'new', least: 120.5, currency: 'EUR', year: 2002, sources: ['price lists'] },
    { condition: 'new', least: 95, currency: 'GBP', year: 2002, sources: ['price lists'] },
  ]);
  expect(file.trade).toEqual({
    discounts: 'rarely',
    sampleSales: false,
    seconds: true,
    outlets: false,
    sources: ['price lists'],
    note: 'by hearsay',
  });
  expect(file.stamped).toEqual({ from: '1971-03', to: '2009', sources: ['the workshop ledger'] });
  expect(decodeText('8609QA', { makers: [file], maker: file.maker }).readings.map(readsOf)).toEqual(['1986-09, PT']);
});

test('what is wrong in a file of the first format is told at the field that it has', () => {
  const problemsOf = (value: object) => {
    const result = parseMakerFile({ format: 1, maker: 'Velmar Lane', ...value });
    return result.ok ? [] : result.problems.map((problem) => `${problem.where}: ${sayProblem(problem, 'en').what}`);
  };
  expect(problemsOf({ models: [{ name: 'Tote', made: ['1990', '1980'] }] })).toEqual([
    'models[0].made: 1990 comes after 1980',
  ]);
  expect(problemsOf({ models: [{ name: 'Tote', runs: [] }] })).toEqual(['models[0]: "runs" is not a field here']);
  expect(problemsOf({ stamped: { from: 'about 1990', to: null, source: '' } })).toEqual([
    'stamped.from: "about 1990" is not a date as 1994, 1994-03 or 1994-03-21',
  ]);
  expect(
    problemsOf({
      construction: [{ part: 'clasp', is: 'brass', used: ['1990', null], strength: 'soft', source: '' }],
    })[0],
  ).toMatch(/^construction\[0\]\.part: "clasp" is not possible here/);
});

test('a file of a format that no build knows yet is refused as such', () => {
  const result = parseMakerFile({ format: 3, maker: 'Velmar Lane', colours: [] });
  expect(result).toMatchObject({
    ok: false,
    problems: [
      {
        code: 'maker-file-newer',
        where: 'format',
        fault: { kind: 'newer-format', format: 3, most: 2 },
      },
    ],
  });
});

describe('a draft that was kept in the first format', () => {
  const former: Draft = {
    value: {
      format: 1,
      maker: 'Velmar Lane',
      plants: [{ code: '', place: '', used: ['1990', null], source: 'half written' }],
      models: [{ name: '', size: { width: 30, unit: 'cm', tolerance: 1 } }, 'no model'],
      codeSystems: [{ id: 'system-1', used: ['1990', null], layout: [], examples: [], where: 7 }],
      construction: 'none yet',
      trade: { newPriceFloor: [{ amount: 100, currency: 'euros', year: 2020 }] },
    },
    past: [{ value: { format: 1, maker: 'Velmar' }, what: 'change maker' }],
    future: [
      {
        value: { format: 1, maker: 'Velmar Lane', models: [{ name: 'Tote', made: ['1990', null] }] },
        what: 'add to models',
      },
    ],
    typing: 'maker',
  };

  it('goes on in the format of today with all its steps, and nothing that is unfinished is lost', () => {
    const draft = currentDraft(draftSchema.parse(former));
    expect(draft.value).toEqual({
      format: 2,
      maker: 'Velmar Lane',
      plants: [{ code: '', place: '', used: ['1990', null], sources: ['half written'] }],
      models: [{ name: '', runs: [{ size: { width: 30, unit: 'cm', tolerance: 1 } }] }, 'no model'],
      codeSystems: [{ id: 'system-1', used: ['1990', null], layout: [], examples: [], where: 7 }],
      construction: 'none yet',
      prices: [{ condition: 'new', least: 100, currency: 'euros', year: 2020 }],
      trade: {},
    });
    expect(undoStep(draft).value).toEqual({ format: 2, maker: 'Velmar' });
    expect(draft.future[0]!.value).toEqual({
      format: 2,
      maker: 'Velmar Lane',
      models: [{ name: 'Tote', runs: [{ made: ['1990', null] }] }],
    });
    expect(draft.typing).toBe('maker');
    expect(currentDraft(draft)).toEqual(draft);
  });

  it('of an export that is unfinished opens with its problems at the fields of today', () => {
    const { draft, problems } = openText(exportText({ ...former, value: { ...former.value, construction: [] } }));
    expect(draft?.value.format).toBe(2);
    expect(problems.map(({ where }) => where)).toEqual(inspectDraft(draft!).problems.map(({ where }) => where));
    expect(problems.map(({ where }) => where)).toContain('prices[0].currency');
  });
});
