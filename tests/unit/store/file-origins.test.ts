import { beforeEach, expect, test, vi } from 'vitest';
import { builtInMakers } from '../../../src/maker';

const kept = vi.hoisted(() => new Map<string, unknown>());
vi.mock('../../../src/browser/api', () => ({
  browser: {
    storage: {
      local: {
        get: async () => Object.fromEntries(kept),
        set: async (values: object) => {
          for (const [key, value] of Object.entries(values)) kept.set(key, JSON.parse(JSON.stringify(value)));
        },
        remove: async (key: string) => kept.delete(key),
      },
    },
  },
}));
const { readOrigin, readOrigins, removeOrigin, writeOrigin } = await import('../../../src/store/file-origins');
beforeEach(() => kept.clear());

const file = builtInMakers[0]!;
const used = { at: '2026-11-01T10:00:00Z', sha256: 'a', file };
const origin = {
  address: 'https://makers.example/ondrasse.json',
  daily: true,
  asked: '2026-11-02T10:00:00Z',
  used,
  found: { ...used, sha256: 'b' },
  troubles: [
    { code: 'file-answer', where: 'a', data: { status: 503 } },
    { code: 'maker-file-part', where: 'numbers[0].part', fault: { kind: 'no-part' as const, part: 'tap' }, line: 7 },
  ],
  before: { used, found: used, own: file, after: file },
};

test('where a file is from is kept whole, by the file’s number, and goes by it', async () => {
  await writeOrigin('one', origin);
  expect(await readOrigins()).toEqual(new Map([['one', origin]]));
  expect([await readOrigin('one'), await readOrigin('two')]).toEqual([origin, null]);
  await removeOrigin('one');
  expect(await readOrigins()).toEqual(new Map());
});

test('what cannot be read is left where it lies, and others are read', async () => {
  const newer = { version: 3, somewhere: 'else' };
  kept.set('maker-origin-newer', newer);
  kept.set('maker-origin-broken', { version: 2, ...origin, used: { ...used, file: { maker: 7 } } });
  kept.set('maker-draft-one', { changedAt: '', draft: {} });
  await writeOrigin('one', origin);
  expect([...(await readOrigins()).keys()]).toEqual(['one']);
  expect(kept.get('maker-origin-newer')).toEqual(newer);
});

test('a file that was kept in a former format is one of today’s when it is read', async () => {
  const former = { format: 1, maker: 'Ondrasse', plants: [{ code: 'KV', place: 'BE', used: ['1982', null] }] };
  kept.set('maker-origin-one', { version: 2, ...origin, before: null, found: null, used: { ...used, file: former } });
  expect((await readOrigins()).get('one')?.used.file).toMatchObject({ format: 2, maker: 'Ondrasse' });
});

test('one of the first form says in English what it said, until the address is asked again', async () => {
  const troubles = [{ code: 'file-answer', where: 'a', what: 'the server answered 503', remedy: 'Try again later.' }];
  kept.set('maker-origin-one', { version: 1, ...origin, troubles });
  expect((await readOrigin('one'))?.troubles).toEqual(troubles);
});
