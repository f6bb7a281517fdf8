import { plainName } from './name';
import type { MakerFile } from './schema';

const ofPieces = ({ models, used }: { models?: string[] | undefined; used?: unknown }) => [
  (models ?? []).map(plainName).sort(),
  used ?? null,
];

/** A list of a maker file whose entries are groups of fields. */
export type EntryList =
  | 'plants'
  | 'codeSystems'
  | 'carriers'
  | 'marks'
  | 'parts'
  | 'construction'
  | 'models'
  | 'numbers'
  | 'typefaces'
  | 'prices';

/** Lists of a maker file whose entries are the same when their keys are. */
export const lists: { list: EntryList; key: (entry: never) => string }[] = [
  {
    list: 'plants',
    key: ({ code, place }: MakerFile['plants'][number]) => `${code} ${place}`,
  },
  {
    list: 'codeSystems',
    key: ({ id }: MakerFile['codeSystems'][number]) => id,
  },
  {
    list: 'carriers',
    key: (carrier: MakerFile['carriers'][number]) =>
      JSON.stringify([carrier.kind, plainName(carrier.where), ofPieces(carrier)]),
  },
  {
    list: 'marks',
    key: (mark: MakerFile['marks'][number]) => JSON.stringify([[...mark.texts].sort(), ofPieces(mark)]),
  },
  {
    list: 'parts',
    key: ({ id }: MakerFile['parts'][number]) => id,
  },
  {
    list: 'construction',
    key: ({ part, is, models }: MakerFile['construction'][number]) =>
      JSON.stringify([part, plainName(is), (models ?? []).map(plainName).sort()]),
  },
  {
    list: 'models',
    key: ({ name }: MakerFile['models'][number]) => plainName(name),
  },
  {
    list: 'numbers',
    key: (number: MakerFile['numbers'][number]) => JSON.stringify([number.of, number.part, ofPieces(number)]),
  },
  {
    list: 'typefaces',
    key: (typeface: MakerFile['typefaces'][number]) => JSON.stringify([plainName(typeface.looks), ofPieces(typeface)]),
  },
  {
    list: 'prices',
    key: ({ model, condition, currency, year }: MakerFile['prices'][number]) =>
      JSON.stringify([plainName(model ?? ''), condition, currency, year]),
  },
];

/** A value with its keys in order, for comparing. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inside]) => inside !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inside]) => [key, plain(inside)]),
  );
}
export const sameValue = (a: unknown, b: unknown): boolean => JSON.stringify(plain(a)) === JSON.stringify(plain(b));

/** Fields in which two groups differ. */
export const fieldsApart = (mine: object, theirs: object): string[] =>
  [...new Set([...Object.keys(mine), ...Object.keys(theirs)])].filter(
    (field) => !sameValue(Reflect.get(mine, field), Reflect.get(theirs, field)),
  );
