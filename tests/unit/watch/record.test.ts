import { readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, it, test } from 'vitest';
import type { Correction } from '../../../src/case';
import type { Reason } from '../../../src/check';
import type { Listing } from '../../../src/listing/types';
import type { PhotoRead } from '../../../src/photo/read-types';
import type { WatchRecord } from '../../../src/watch';
import { openRecord } from '../../../src/watch/migrations';
import type { Look, LookName } from '../../../src/watch/types';
import { recordJsonSchemas } from '../../tools/record-schemas';

const readText = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');

type Fields = Record<string, unknown>;
const exported = (name: string): Fields[] => JSON.parse(readText(`exports/${name}.json`)).records;

/** What a record says of a piece's page and photos, whose form is held to the last field. */
const held = (record: Fields): Fields[] => {
  const { listing, photos } = record.case as { listing: Fields; photos: Fields[] };
  return [record, record.case as Fields, ...objectsIn(listing), ...objectsIn(photos.slice(1, 3))];
};
/** Every object with named fields; a table of probabilities or a free detail is none. */
function objectsIn(value: unknown): Fields[] {
  if (Array.isArray(value)) return value.flatMap(objectsIn);
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.entries(value).flatMap(([name, one]) => (name === 'steps' ? [] : objectsIn(one)));
  return [value as Fields, ...inner];
}

test.each(Object.entries(recordJsonSchemas()))(
  'the frozen form %s is the one that is committed: a form that was published is never edited',
  (name, text) => {
    expect(readText(`../../../docs/records/${name}.schema.json`)).toBe(text);
  },
);

test('listings, readings and corrections of today have the form that is kept: another one is a new version', () => {
  // Held by the compiler; a field more would be refused when a case is saved.
  expectTypeOf<Omit<Listing, 'page'>>().toEqualTypeOf<Omit<Look['listing'], 'page'>>();
  expectTypeOf<PhotoRead>().toEqualTypeOf<Look['photos'][number]>();
  type ByHand<T> = Exclude<T, { of: 'claim' | 'mark' }>;
  expectTypeOf<ByHand<Correction>>().toEqualTypeOf<ByHand<LookName['corrections'][number]>>();
  // What may be marked and measured grows; what is kept of it may have any name.
  type Marked<T> = Extract<T, { of: 'mark' }>;
  expectTypeOf<Marked<Correction>>().toExtend<Marked<LookName['corrections'][number]>>();
  expectTypeOf<keyof Marked<Correction>['mark']>().toEqualTypeOf<
    keyof Marked<LookName['corrections'][number]>['mark']
  >();
  expectTypeOf<Reason>().toEqualTypeOf<WatchRecord['shown']['head']['notLookedAt']['reasons'][number]>();
});

describe.each(['version-2', 'version-2-observations'])('an exported record (%s)', (name) => {
  const [whole] = exported(name) as [Fields];
  const { pictures, earlier, case: kase, ...rest } = whole;
  const nothing = { claims: [], decodings: [], evidence: [], outcomes: [], questions: [] };
  // Two steps of a line and no conclusions: the record is opened some hundred times.
  const record: Fields = JSON.parse(
    JSON.stringify({ ...rest, pictures: [], earlier: [], case: { ...(kase as Fields), ...nothing } }),
    (field, value) => (field === 'steps' ? value.slice(0, 2) : value),
  );

  it('can be read', () => {
    expect(openRecord(structuredClone(whole))).toMatchObject({ state: 'older' });
    expect(pictures).toHaveLength(3);
    expect(earlier).toHaveLength(1);
  });

  it('is one of a newer build with any field more, however deep it lies', () => {
    const states = held(record).map((_, at) => {
      const changed = structuredClone(record);
      held(changed)[at]!.fromTomorrow = 1;
      return openRecord(changed).state;
    });
    expect(states.length).toBeGreaterThan(60);
    expect(new Set(states)).toEqual(new Set(['newer']));
  });

  it('is damaged with a field of another kind, and the place is named', () => {
    const places = held(record).flatMap((fields, at) =>
      Object.keys(fields).flatMap((field) => (field === 'detail' || field === 'version' ? [] : [{ at, field }])),
    );
    const wrong = places.filter(({ at, field }) => {
      const changed = structuredClone(record);
      held(changed)[at]![field] = { mistyped: true };
      const opened = openRecord(changed);
      return opened.state !== 'damaged' || opened.problem.code !== 'record-damaged';
    });
    // Conclusions are worked out anew, whatever they are.
    expect([...new Set(wrong.map(({ field }) => field))]).toEqual(expect.not.arrayContaining(['listing', 'photos']));
    expect(wrong.filter(({ at }) => at > 1)).toEqual([]);
  });
});
