import { describe, expect, it } from 'vitest';
import { buildCase, correct, typedCode } from '../../../src/case';
import { parseMakerFile } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { listingOf } from './sample-listing';

const layout = [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }];
const system = { id: 'one', used: ['1990', '2006'], layout, examples: [{ code: 'KV0915', reads: '1995-01' }] };
const plant = { code: 'KV', place: 'BE', used: ['1980', null] };

function fileOf(value: object): MakerFile {
  const whole = { format: 2, maker: 'Velmar Lane', plants: [plant], codeSystems: [system], ...value };
  const result = parseMakerFile(whole);
  if (!result.ok) throw new Error(result.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
  return result.file;
}

/** A listing of Velmar Lane with a code that the buyer typed, or none; the kinds of the findings of one check. */
function judged(file: object, description: string, { code = '', title = 'Velmar Lane Tote' } = {}) {
  const kase = buildCase({
    listing: listingOf(title, description),
    photos: [],
    corrections: code ? correct([], typedCode(code)) : [],
    makers: [fileOf(file)],
    now: '2026-11-29T10:00:00.000Z',
  });
  const findings = kase.outcomes.flatMap((outcome) => ('findings' in outcome ? outcome.findings : []));
  return {
    kase,
    kinds: (check: string) => findings.filter((one) => one.check === check).map(({ kind }) => kind),
  };
}

describe('marks beside the code', () => {
  const marks = [{ kind: 'repair', texts: ['R'], means: 'repaired in the house’s own workshop' }];
  it('leave the code that stands with them whole, and are told with it', () => {
    const { kase, kinds } = judged({ marks }, 'A tote.', { code: 'KV0915 R' });
    expect(kinds('code-fits-maker')).toEqual(['agreement']);
    expect(kase.decodings[0]).toMatchObject({ code: 'KV0915', beside: [{ text: 'R', kind: 'repair' }] });
  });

  it('are a doubt where the file does not know them, or took them back', () => {
    expect(judged({}, 'A tote.', { code: 'KV0915 R' }).kinds('code-fits-maker')).toEqual(['doubt']);
    const withdrawn = [{ ...marks[0], standing: { is: 'withdrawn' } }];
    expect(judged({ marks: withdrawn }, 'A tote.', { code: 'KV0915 R' }).kinds('code-fits-maker')).toEqual(['doubt']);
  });
});

describe('exceptions', () => {
  it('of a workshop lift the conflict with its years, and no other', () => {
    const closed = { ...plant, used: ['1980', '1990'] };
    const kinds = (exceptions: object[]) =>
      judged({ plants: [exceptions.length > 0 ? { ...closed, exceptions } : closed] }, 'A tote.', {
        code: 'KV0915',
      }).kinds('plant-in-use');
    expect(kinds([])).toEqual(['contradiction']);
    expect(kinds([{ what: 'opened again for a year', used: ['1995', '1995'] }])).toEqual(['agreement']);
    expect(kinds([{ what: 'opened again for a year', used: ['1999', '1999'] }])).toEqual(['contradiction']);
    expect(kinds([{ what: 'some stock was stamped later' }])).toEqual(['doubt']);
  });

  it('of a code system lift the conflict with its years', () => {
    const used = { ...system, used: ['1990', '1993'], examples: [{ code: 'KV0912', reads: '1992-01' }] };
    const kinds = (exceptions?: object[]) =>
      judged({ codeSystems: [exceptions ? { ...used, exceptions } : used] }, 'A tote.', { code: 'KV0915' }).kinds(
        'code-system-in-use',
      );
    expect(kinds()).toEqual(['doubt']);
    expect(kinds([{ what: 'one line kept it', used: ['1994', '1996'] }])).toEqual([]);
    expect(kinds([{ what: 'one line kept it', used: ['2001', '2002'] }])).toEqual(['doubt']);
  });

  it('of the years of stamping lift the doubt that a code is older', () => {
    const kinds = (exceptions?: object[]) =>
      judged({ stamped: { from: '1998', to: null, ...(exceptions ? { exceptions } : {}) } }, 'Made in 1995.', {
        code: 'KV0915',
      }).kinds('code-before-stamping');
    expect(kinds()).not.toEqual([]);
    expect(kinds([{ what: 'the Brussels workshop tried it before', used: ['1994', '1996'] }])).toEqual([]);
  });

  it('of a model lift the doubt about its years', () => {
    const runs = [{ made: ['1980', '1990'] }];
    const kinds = (more: object) =>
      judged({ models: [{ name: 'Tote', runs, ...more }] }, 'Made in 1998. A tote.').kinds('model-made-then');
    expect(kinds({})).toEqual(['doubt']);
    expect(kinds({ exceptions: [{ what: 'to order', used: ['1997', '1999'] }] })).not.toContain('doubt');
  });

  it('of a price leave the models that they name to other prices', () => {
    const price = { condition: 'new', least: 900, currency: 'EUR', year: 2020 };
    const kinds = (more: object) =>
      judged({ models: [{ name: 'Tote' }], prices: [{ ...price, ...more }] }, 'Brand new, never used.', {
        title: 'Velmar Lane Tote',
      });
    const asked = (more: object) =>
      kinds(more).kase.evidence.filter(({ about, from }) => about === 'price' && from.kind === 'maker-file').length;
    expect(asked({})).toBe(1);
    expect(asked({ exceptions: [{ what: 'the tote was cheaper', models: ['Tote'] }] })).toBe(0);
    expect(asked({ exceptions: [{ what: 'purses', models: ['Purse'] }] })).toBe(1);
  });
});

describe('editions, re-issues and collaborations', () => {
  const lining = { part: 'lining', is: 'olive twill', used: ['1970', '1985'], strength: 'hard' };
  const runs = [{ made: ['1980', '2006'] }, { made: ['1995', '1995'], kind: 'edition', name: 'Gala' }];
  const kinds = (title: string, construction: object = lining) =>
    judged({ models: [{ name: 'Tote', runs }], construction: [construction] }, 'Lining of olive twill.', {
      code: 'KV0915',
      title,
    }).kinds('construction-against-date');

  it('soften a conflict of materials where the listing names one', () => {
    expect(kinds('Velmar Lane Tote')).toEqual(['contradiction']);
    expect(kinds('Velmar Lane Tote Gala')).toEqual(['doubt']);
  });

  it('lift it where the fact makes an exception of them', () => {
    const excepted = { ...lining, exceptions: [{ what: 'the gala edition', models: ['Gala'] }] };
    expect(kinds('Velmar Lane Tote', excepted)).toEqual(['contradiction']);
    expect(kinds('Velmar Lane Tote Gala', excepted)).toEqual([]);
  });
});
