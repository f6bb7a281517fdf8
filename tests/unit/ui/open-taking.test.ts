import { beforeEach, expect, it, vi } from 'vitest';
import type { Case } from '../../../src/case';

const fakes = vi.hoisted(() => ({ session: new Map<string, unknown>(), opened: [] as string[], maker: '' }));
vi.mock('../../../src/browser/api', () => ({
  browser: {
    storage: {
      session: {
        set: async (all: Record<string, unknown>) => {
          for (const [key, value] of Object.entries(all)) fakes.session.set(key, value);
        },
        get: async (key: string) => ({ [key]: fakes.session.get(key) }),
      },
    },
  },
}));
vi.mock('../../../src/browser/compat', () => ({ openFullPage: async (hash: string) => fakes.opened.push(hash) }));
vi.mock('../../../src/case', async (importActual) => ({
  ...(await importActual<object>()),
  makerNamed: () => fakes.maker,
}));

const { openTaking } = await import('../../../src/ui/panel/maker-file-ways');
const { readWanted } = await import('../../../src/store/taken');
const open = (maker: string, incognito = false) => {
  fakes.maker = maker;
  return openTaking({} as Case, incognito);
};

beforeEach(() => {
  fakes.session.clear();
  fakes.opened.length = 0;
});

it('looks for the maker of the listing that was open last', async () => {
  await open('Wexmoor');
  expect([await readWanted(), fakes.opened]).toEqual(['Wexmoor', ['#makers&take&for=Wexmoor']]);
});

it('looks for nobody once a listing names none, and keeps nothing of a private window', async () => {
  await open('Wexmoor');
  await open('');
  expect([await readWanted(), fakes.opened.at(-1)]).toEqual(['', '#makers&take']);
  await open('Wexmoor');
  await open('Harrowlen', true);
  expect(await readWanted()).toBe('');
});
