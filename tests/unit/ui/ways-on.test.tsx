// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, test, vi } from 'vitest';
import { buildCase } from '../../../src/case';
import { WaysOn } from '../../../src/ui/parts/WaysOn';
import { listingOf } from '../case/sample-listing';

vi.mock('../../../src/store/maker-files', () => ({ finishedMakers: async () => [] }));

function shown(title: string, onNameMaker: (maker: string) => void = () => undefined): HTMLElement {
  const listing = listingOf(title, 'Brown leather.', 1);
  const kase = buildCase({ listing, photos: [], corrections: [], makers: [], now: '2026-01-15T10:00:00Z' });
  const room = document.createElement('div');
  const none = () => undefined;
  const ways = { onStartFile: none, onTakeFromPage: none, onBringFile: none, onPointAtMaker: none };
  act(() => render(<WaysOn kase={kase} {...ways} onNameMaker={onNameMaker} />, room));
  return room;
}
const field = (room: HTMLElement) => room.querySelector('input') as HTMLInputElement;

test('a name that the title may give is asked for, filled in, and taken by one press', () => {
  const named: string[] = [];
  const room = shown('Marlow & Pryce satchel, 1998', (maker) => named.push(maker));
  expect(field(room).value).toBe('Marlow & Pryce');
  expect(room.textContent).toContain('It may be this maker: use the name');
  act(() => room.querySelector('form')?.requestSubmit());
  expect(named).toEqual(['Marlow & Pryce']);
});

test('where no word may be a name the field is empty', () => {
  const room = shown('Brown leather satchel, 1998');
  expect(field(room).value).toBe('');
  expect(room.textContent).toContain('The page does not say whose it is');
});
