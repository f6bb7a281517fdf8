import { expect, it } from 'vitest';
import type { Says, Stated } from '../../../src/evidence';
import { monthSpan, yearSpan, yearsSpan } from '../../../src/span';
import { sayConflict, sayExplanation, sayFinding, sayStated, sayStretch, sayWeight } from '../../../src/words';
import { piece } from '../evidence/samples';

const stated = (says: Says, rest: Partial<Stated> = {}): Stated => ({ says, spans: [], places: [], ...rest });
const year: Stated = stated({ kind: 'made', field: 'title', words: '1984' }, { spans: [yearSpan(1984)] });
const code: Stated = stated(
  { kind: 'code', from: 'photo', code: 'KV0915', by: [] },
  { spans: [monthSpan(1995, 1)], places: ['BE'] },
);

it.each<[Stated, string, string]>([
  [year, 'The listing says “1984”', 'Im Angebot steht „1984“'],
  [code, 'The stamp reads KV0915: January 1995, Belgium', 'Der Stempel lautet KV0915: Januar 1995, Belgien'],
  [
    stated(
      {
        kind: 'code',
        from: 'claim',
        code: 'KV0915',
        by: [
          { maker: null, invented: false },
          { maker: 'Ondrasse', invented: true },
        ],
      },
      { places: ['IT', 'FR'] },
    ),
    'The listing quotes the code KV0915, by its shape alone or by the invented maker file of Ondrasse: Italy or France',
    'Das Angebot zitiert den Code KV0915, allein nach seiner Form oder nach der erfundenen Herstellerdatei von Ondrasse: Italien oder Frankreich',
  ],
  [
    stated({ kind: 'bought', field: 'reply', words: 'gekauft 2001' }, { spans: [yearsSpan(null, 2001)] }),
    "The seller's reply says “gekauft 2001” (up to 2001)",
    'In der Antwort steht „gekauft 2001“ (bis 2001)',
  ],
  [
    stated({ kind: 'origin', field: 'user', words: 'east german' }, { places: ['DDDE'] }),
    'The note says “east german” (East Germany)',
    'In der Notiz steht „east german“ (DDR)',
  ],
  [
    stated({ kind: 'system', code: 'KV0915' }, { spans: [yearsSpan(1990, 2006)] }),
    'The way that KV0915 is written was in use 1990 to 2006',
    'Die Schreibweise von KV0915 war 1990 bis 2006 in Gebrauch',
  ],
  [
    stated({ kind: 'plant', plants: ['KV', 'LT'] }, { spans: [yearsSpan(1988, null)] }),
    'The workshop KV or LT was at work from 1988',
    'Die Werkstatt KV oder LT arbeitete ab 1988',
  ],
  [
    stated(
      {
        kind: 'material',
        field: 'text',
        words: 'twill inside',
        maker: 'Ondrasse',
        part: 'lining',
        is: ['olive twill'],
      },
      { spans: [yearsSpan(1970, 1999)] },
    ),
    'The listing says “twill inside”, and Ondrasse used lining of olive twill 1970 to 1999',
    'Im Angebot steht „twill inside“, und Ondrasse verwendete Futter aus olive twill 1970 bis 1999',
  ],
])('says %j in English and in German', (one, english, german) => {
  expect([sayStated(one, 'en'), sayStated(one, 'de')]).toEqual([english, german]);
});

it('says what follows from several in German', () => {
  expect(sayConflict({ over: 'date', hard: true, facts: [year, code] }, 'de')).toBe(
    'Keine Zeit passt zu beidem: im Angebot steht „1984“; der Stempel lautet KV0915: Januar 1995, Belgien',
  );
  expect(sayExplanation({ rest: 'hard', spans: [yearSpan(1995)], places: [] }, code, 'de')).toBe(
    'Wenn der Code, wie er gelesen wurde, falsch ist (der Stempel lautet KV0915: Januar 1995, Belgien), passen alle anderen festen Angaben zusammen: 1995',
  );
  expect(sayStretch({ spans: [], places: [] }, 'de')).toBe('jede Zeit und jeder Ort');
  const soft = piece('a', { ...year, strength: 'soft' });
  const derivation = { statements: 2, facts: 1, soft, backing: { facts: 1, against: null }, source: 'photo' } as const;
  expect(sayWeight({ derivation }, 'de')).toEqual([
    'Es wiegt weniger, weil eine der Angaben eine Gewohnheit oder ungefähr ist: im Angebot steht „1984“.',
    'Es beruht auf 1 Angabe; Wiederholtes zählt einmal.',
    '1 weitere Angabe passt dazu.',
    'Es wurde in einem Foto gelesen.',
  ]);
});

it('says of a finding with the data of another build what its check is called', () => {
  const { statement } = sayFinding({ check: 'evidence-agrees', kind: 'agreement', data: { agree: 3 } }, 'en');
  expect(statement).toBe('All that dates or places the piece can hold together');
});

it('says of more than two dates the years alone', () => {
  const months = (...dates: [number, number][]) =>
    sayStretch({ spans: dates.map(([of, month]) => monthSpan(of, month)), places: [] }, 'en');
  expect(months([1978, 9], [1998, 7])).toBe('September 1978 or July 1998');
  expect(months([1978, 2], [1978, 9], [1998, 7])).toBe('1978 or 1998');
  expect(sayStretch({ spans: [yearsSpan(1970, 1972), monthSpan(1980, 1), monthSpan(1990, 1)], places: [] }, 'en')).toBe(
    '1970 to 1972, January 1980 or January 1990',
  );
});
