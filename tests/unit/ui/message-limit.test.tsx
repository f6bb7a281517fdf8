// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';

const stored = vi.hoisted(() => new Map<string, unknown>());
vi.mock('../../../src/browser/api', () => ({
  browser: {
    storage: {
      local: {
        get: async (key: string) => (stored.has(key) ? { [key]: stored.get(key) } : {}),
        set: async (values: object) => {
          for (const [key, value] of Object.entries(values)) stored.set(key, value);
        },
        remove: async (key: string) => stored.delete(key),
      },
    },
  },
}));

import { type MessageLimit, useMessageLimit } from '../../../src/ui/message/use-limit';

const room = document.createElement('div');
let limit: MessageLimit;
function Screen({ url }: { url: string | null }) {
  limit = useMessageLimit(url);
  return <p>{limit.most ?? 'none'}</p>;
}
const open = (url: string | null) => act(async () => render(<Screen url={url} />, room));
const said = () => room.textContent;
beforeEach(() => stored.clear());
afterEach(() => act(() => render(null, room)));

const here = 'https://attic-arcade.example/item/1';

it('is remembered for every listing of the site, and for no other site', async () => {
  await open(here);
  expect(said()).toBe('none');
  await act(() => limit.keep(500));
  await open('https://shop.example/1');
  expect(said()).toBe('none');
  await open('https://attic-arcade.example/item/2');
  await vi.waitFor(() => expect(said()).toBe('500'));
});

it('is forgotten when the buyer empties the field', async () => {
  await open(here);
  await act(() => limit.keep(500));
  await act(() => limit.keep(null));
  expect([said(), stored.size]).toEqual(['none', 0]);
});

it('is kept nowhere where there is no address to keep it by, as in a private window', async () => {
  await open(null);
  await act(() => limit.keep(500));
  expect([said(), stored.size]).toEqual(['500', 0]);
});

it('that is no number any more counts as none', async () => {
  stored.set('message-limit-attic-arcade.example', 'many');
  await open(here);
  expect(said()).toBe('none');
});
