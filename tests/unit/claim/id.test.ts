import { describe, expect, it } from 'vitest';
import { buildCase, caseSchema, findingsOf, lookAt } from '../../../src/case';
import { claimSchema, findClaims } from '../../../src/claim';
import { claimNamer } from '../../../src/claim/id';
import { builtInMakers } from '../../../src/maker';
import { listingOf as listingToJudge } from '../case/sample-listing';
import { listingOf, ondrasse } from './listing-of';

const description =
  'Made in Belgium in 1994. Olive twill lining, date code KV0915. Bought in 2001. In the style of Ondrasse. Bank transfer only.';
const idsOf = (title: string, text: string) => findClaims(listingOf(title, text), [ondrasse]).map(({ id }) => id);

describe('ids of claims', () => {
  it('say the kind, and stay when a title says one thing more', () => {
    const before = idsOf('Ondrasse Carryall 30, 1994', description);
    const after = idsOf('Early 1990s Ondrasse Carryall 30, 1994', description);
    expect(before.length).toBeGreaterThan(7);
    expect(before.every((id) => /^[a-z-]+-[0-9a-z]{7}(-\d+)?$/.test(id))).toBe(true);
    expect(after.filter((id) => !before.includes(id))).toHaveLength(1);
    expect(before.filter((id) => !after.includes(id))).toEqual([]);
  });

  it('stay when sentences change places', () => {
    const turned = description.split('. ').reverse().join('. ');
    expect(idsOf('', turned).sort()).toEqual(idsOf('', description).sort());
  });

  it('differ between fields, between statements, and between two identical ones', () => {
    const [inTitle, inText] = idsOf('1994', 'Made in 1994.');
    expect(inTitle).not.toBe(inText);
    expect(idsOf('', 'Made in 1994.')).not.toEqual(idsOf('', 'Made in 1995.'));
    const [first, second] = idsOf('', 'Made in 1994. It was made in 1994.');
    expect(second).toBe(`${first}-2`);
  });

  it('do not depend on how sure the reader is, nor on blanks between words', () => {
    expect(idsOf('', 'Bank  transfer\nonly')).toEqual(idsOf('', 'Bank transfer only'));
  });

  it('depend on the words and what they say, not on how these are written down', () => {
    const named = (more: object) =>
      claimNamer()({
        kind: 'origin',
        words: 'Made in Belgium',
        at: { field: 'text' },
        confidence: 1,
        ...more,
      } as never);
    const id = named({});
    const same = [
      { words: ' Made in Belgium' },
      { words: 'Made in Belgium\n' },
      { words: 'Made  in\tBelgium' },
      { confidence: 0.5 },
      { at: { field: 'text', start: 9, end: 24 } },
      { place: undefined },
    ];
    expect(same.map(named)).toEqual(same.map(() => id));
    const others = [
      { words: 'made in Belgium' },
      { words: 'MadeinBelgium' },
      { at: { field: 'title' } },
      { place: 'BE' },
      { kind: 'made' },
    ];
    expect(new Set([id, ...others.map(named)]).size).toBe(others.length + 1);
    expect(named({ parts: ['é', { a: 1, b: [2] }] })).toBe(named({ parts: ['e\u0301', { b: [2], a: 1 }] }));
    expect(named({ parts: ['zip', 'lock'] })).not.toBe(named({ parts: ['lock', 'zip'] }));
  });

  it('keep what findings and questions rest on under its name', { timeout: 60_000 }, () => {
    const judge = (title: string) =>
      buildCase({
        listing: listingToJudge(title, description),
        photos: [],
        corrections: [],
        makers: builtInMakers,
        now: '2026-01-15T10:00:00Z',
      });
    const [before, after] = [judge('Ondrasse Carryall 30'), judge('Replica? Early 1990s Ondrasse Carryall 30')];
    const keyed = findingsOf(before).filter(({ check }) => /payment-inside|authorship-plain/.test(check));
    expect(keyed.length).toBeGreaterThan(1);
    const ids = findingsOf(after).map(({ id }) => id);
    expect(keyed.filter(({ id }) => !ids.includes(id))).toEqual([]);
  });
});

describe('claims that an earlier build numbered', () => {
  const numbered = claimSchema.array().parse([
    {
      kind: 'made',
      id: 'made-1',
      words: '1994',
      at: { field: 'description', start: 8, end: 12 },
      confidence: 0.9,
      span: { from: '1994-01-01', to: '1994-12-31', precision: 'year' },
    },
  ]);

  it('open as they are, and a new look at the same words tells no change', { timeout: 60_000 }, () => {
    const input = {
      listing: listingToJudge('Ondrasse bag', 'Made in 1994.'),
      photos: [],
      corrections: [],
      makers: builtInMakers,
      now: '2026-01-15T10:00:00Z',
    };
    const old = caseSchema.parse({ ...buildCase(input), claims: numbered });
    expect(old.claims[0]?.id).toBe('made-1');
    const fresh = buildCase({ ...input, previous: lookAt(old) });
    expect(findingsOf(fresh).filter(({ check }) => check === 'claims-changed')).toEqual([]);
  });
});
