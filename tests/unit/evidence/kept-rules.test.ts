import { expect, it } from 'vitest';
import { type Dating, type Evidence, pairsOf } from '../../../src/evidence';
import { apartAsSaid, rules, toldTogether } from '../../../src/evidence/rule';
import type { Rule, Side } from '../../../src/evidence/rule/types';
import { type Span, yearSpan, yearsSpan } from '../../../src/span';
import { claimed, coded, markSaid, piece } from './samples';
import { shown } from './stands';

/*
 * Every two kinds of statements that a rule compares: apart, as firm as statements can be, and together. Where it changes on purpose,
 * `npm test -- unit/evidence/kept --update` writes it anew.
 */

const by = { field: 'title' as const, words: 'x' };
const ofFile = { ...by, maker: 'Ondrasse', part: 'lining', is: ['twill'] };
const dating = {
  'claimed-date': { kind: 'made', ...by },
  purchase: { kind: 'bought', ...by },
  country: { kind: 'country', ...by, place: 'CSHH' },
  origin: { kind: 'origin', ...by },
  code: { kind: 'code', from: 'photo', code: 'KV', by: [] },
  system: { kind: 'system', code: 'KV' },
  plant: { kind: 'plant', plants: ['KV'] },
  mark: markSaid('x'),
  material: { kind: 'material', ...ofFile },
  'other-material': { kind: 'other-material', ...ofFile, used: [] },
  model: { kind: 'model', ...by, maker: 'Ondrasse', model: 'Satchel' },
} satisfies Record<string, Dating['says']>;
const ages = ['today', 'purchase-day', 'age-word', 'fresh', 'later-material', 'stamping', 'stamped'];

/** A statement of a kind, hard, of these dates, this country and this amount. */
function statement(kind: Side, id: string, spans: Span[], place: string, amount: number): Evidence {
  const plain = { spans, places: [place], strength: 'hard' as const, basis: id };
  if (kind in dating) return piece(id, { ...plain, says: dating[kind as keyof typeof dating] });
  const aside = {
    ...plain,
    id,
    places: [],
    source: { kind: 'photo' },
    from: { kind: 'claim', id },
    says: { kind, ...by },
  };
  if (ages.includes(kind)) return { ...aside, about: 'age' } as unknown as Evidence;
  const amounts = [{ of: 'x', unit: 'y', least: amount, most: amount }];
  const quality = { of: 'x', is: [`name ${amount}`] };
  const about = rules.flatMap((rule: Rule) => ([...rule.left, ...rule.right].includes(kind) ? [rule.over] : []))[0];
  return { ...aside, spans: [], about, ...(about === 'quality' ? { quality } : { amounts }) } as unknown as Evidence;
}

const told = (id: string, left: Evidence, right: Evidence): string =>
  pairsOf([left, right])
    .filter(({ rule }) => rule === id)
    .map(({ relation, hard, informs, narrows }) =>
      [relation, hard && 'hard', informs, narrows && 'narrows'].filter(Boolean).join(' '),
    )
    .join('; ') || 'not compared';

it('each rule, over each two kinds of statements that it compares', async () => {
  const open = [yearsSpan(1990, null)];
  const compared = rules.map((rule: Rule): [string, string[]] => {
    const signs = [toldTogether.has(rule.id) && 'told together', apartAsSaid.has(rule.id) && 'apart as said'].filter(
      Boolean,
    );
    const lines = rule.left.flatMap((one) =>
      rule.right.map((other) => {
        const left = (spans: Span[], place = 'BE', amount = 10) => statement(one, 'left', spans, place, amount);
        const right = (spans: Span[], place = 'BE', amount = 10) => statement(other, 'right', spans, place, amount);
        const cases = {
          apart: told(rule.id, left([yearSpan(1990)], 'BE', 1), right([yearSpan(1999)], 'IT', 99)),
          'the other way': told(rule.id, left([yearSpan(1999)], 'IT', 99), right([yearSpan(1990)], 'BE', 1)),
          together: told(rule.id, left([yearSpan(1990)]), right([yearSpan(1990)])),
          'left open': told(rule.id, left(open), right([yearSpan(1995)])),
          'right open': told(rule.id, left([yearSpan(1995)]), right(open)),
        };
        return `${one} × ${other}: ${Object.entries(cases)
          .map(([name, said]) => `${name} ${said}`)
          .join(', ')}`;
      }),
    );
    return [[`${rule.id} over ${rule.over}`, ...signs].join(', '), lines];
  });
  await expect(shown(Object.fromEntries(compared))).toMatchFileSnapshot('./kept/rules.txt');
});

it('the rules of one code hold it against its own system and plant', () => {
  const times = ['within', 'near', 'beyond'] as const;
  const of = (system: 'within' | 'near' | 'beyond', plant: 'within' | 'near' | 'beyond', strength: 'hard' | 'soft') => {
    const from = (kind: 'reading' | 'system' | 'plant') => ({ kind, id: 'd' });
    const code = coded('c', { from: from('reading'), ownTime: { system, plant }, strength });
    const own = (id: 'system' | 'plant') => piece(id, { from: from(id), says: dating[id], strength });
    return pairsOf([code, own('system'), own('plant'), claimed('m')])
      .filter(({ rule }) => rule === 'code-system' || rule === 'code-plant')
      .map(({ rule, relation, hard, informs, narrows, withheld }) =>
        [rule, relation, hard && 'hard', informs, narrows && 'narrows', withheld && 'withheld']
          .filter(Boolean)
          .join(' '),
      )
      .join('; ');
  };
  expect(times.map((time) => of(time, 'within', 'hard'))).toEqual([
    'code-system agrees; code-plant agrees closed-period',
    'code-system conflicts; code-plant agrees withheld',
    'code-system conflicts hard; code-plant agrees withheld',
  ]);
  expect(times.map((time) => of('within', time, 'hard').split('; ')[1])).toEqual([
    'code-plant agrees closed-period',
    'code-plant conflicts',
    'code-plant conflicts hard',
  ]);
  expect(times.map((time) => of(time, time, 'soft'))).toEqual([
    'code-system agrees; code-plant agrees closed-period',
    'code-system conflicts; code-plant conflicts withheld',
    'code-system conflicts; code-plant conflicts withheld',
  ]);
});
