import { beforeEach, expect, test, vi } from 'vitest';
import { builtInMakers } from '../../../../src/maker';

const room = vi.hoisted(() => ({ kept: new Map<string, unknown>(), isPrivate: false }));
vi.mock('../../../../src/browser/api', () => ({
  browser: {
    extension: {
      get inIncognitoContext() {
        return room.isPrivate;
      },
    },
    permissions: { contains: async () => true },
    storage: {
      local: {
        get: async () => Object.fromEntries(room.kept),
        set: async (values: object) => {
          for (const [key, value] of Object.entries(values)) room.kept.set(key, structuredClone(value));
        },
      },
    },
  },
}));
const { lookWhereDue } = await import('../../../../src/reader/file/browser-ports');
const { readOrigin, writeOrigin } = await import('../../../../src/store/file-origins');

const asked: string[] = [];
vi.stubGlobal('fetch', async (address: string) => {
  asked.push(address);
  return new Response(null, { status: 404 });
});

const long = '2020-01-01T00:00:00.000Z';
const origin = (address: string, daily: boolean) => ({
  address,
  daily,
  asked: long,
  used: { at: long, sha256: 'a', file: builtInMakers[0]! },
  found: null,
  troubles: [],
  before: null,
});
beforeEach(async () => {
  asked.length = 0;
  room.kept.clear();
  room.isPrivate = false;
  await writeOrigin('one', origin('https://makers.example/one.json', true));
  await writeOrigin('two', origin('https://makers.example/two.json', false));
});

test('asks the addresses that are wanted daily once, and keeps why one brought nothing', async () => {
  await lookWhereDue();
  await lookWhereDue();
  expect(asked).toEqual(['https://makers.example/one.json']);
  expect((await readOrigin('one'))?.troubles).toMatchObject([{ code: 'file-missing' }]);
});

test('asks nobody from a private window, and keeps nothing', async () => {
  room.isPrivate = true;
  const before = structuredClone(room.kept);
  await lookWhereDue();
  expect(asked).toEqual([]);
  expect(room.kept).toEqual(before);
});
