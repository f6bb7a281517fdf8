// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, test } from 'vitest';
import type { Listing } from '../../../src/listing/types';
import type { Came } from '../../../src/photo/read-types';
import { AllowHosts } from '../../../src/ui/panel/AllowHosts';
import { blankState, type PanelState } from '../../../src/ui/panel/state';
import { photoRead } from '../../photo-read';
import { blankListing } from '../blank-listing';

function offered(listing: Listing | null, views: PanelState['views'] = {}): string {
  const room = document.createElement('div');
  render(<AllowHosts state={{ ...blankState, listing, views }} onAllowed={() => undefined} />, room);
  return room.textContent ?? '';
}

const unread = (where: string) => ({ code: 'frame-not-read', where, what: 'not read', remedy: 'Allow it.' });

test('the right to a frame whose words were not read is offered, also for a listing without photos', () => {
  const problems = [unread('https://words.attic-arcade.example/7'), unread('https://words.attic-arcade.example/8')];
  expect(offered({ ...blankListing, problems })).toBe('Allow reading from words.attic-arcade.example');
});

test('nothing is offered where nothing is left to allow', () => {
  expect(offered(null)).toBe('');
  expect(offered(blankListing)).toBe('');
});

const viewOf = (came: Came, width: number): PanelState['views'][string] => ({
  read: photoRead('p1', { width, height: width, came }),
  thumbnail: null,
  crops: [],
});
const link = (width: number | null) => ({
  id: 'p1',
  url: 'https://photos.attic-arcade.example/1.jpg',
  alternatives: [],
  width,
  height: null,
  alt: '',
  origins: [],
});

test('the host is offered whenever the full size of a photo was not had, and the sizes are named where known', () => {
  const capture: Came = { way: 'capture', fullSize: false, part: false, largest: null };
  const listing = { ...blankListing, photos: [link(1200)] };
  expect(offered(listing, { p1: viewOf(capture, 160) })).toContain(
    'A photo was read from a small copyThe full size, 1200 pixels wide, is on photos.attic-arcade.example. The browser gives it out only if you allow that address; until then the copy on the page is read, 160 pixels wide.',
  );
  const known: Came = { ...capture, largest: { width: 1600, height: 1200 } };
  expect(offered({ ...blankListing, photos: [link(null)] }, { p1: viewOf(known, 400) })).toContain('1600 pixels wide');
  expect(offered({ ...blankListing, photos: [link(null)] }, { p1: viewOf(capture, 400) })).toContain(
    'The full size is on',
  );
  expect(offered(listing, { p1: viewOf({ way: 'page', fullSize: false }, 300) })).toContain('Allow reading from');
});

test('no host is offered for a photo that was had in full, whichever way it came', () => {
  const listing = { ...blankListing, photos: [link(1200)] };
  expect(offered(listing, { p1: viewOf({ way: 'page', fullSize: true }, 1200) })).toBe('');
  expect(offered(listing, { p1: viewOf({ way: 'background', fullSize: true }, 1200) })).toBe('');
  expect(offered(listing, { p1: viewOf({ way: 'capture', fullSize: true, part: false, largest: null }, 1200) })).toBe(
    '',
  );
});

test('no host is offered for a photo whose address leads on, since the right to it would bring nothing', () => {
  const listing = { ...blankListing, photos: [link(1200)] };
  const ledOn: Came = { way: 'capture', fullSize: false, part: false, largest: null, ledOn: true };
  expect(offered(listing, { p1: viewOf(ledOn, 160) })).toBe('');
});

test('in a private window no right is offered, since the browser would keep the host’s name', () => {
  const room = document.createElement('div');
  const listing = { ...blankListing, problems: [unread('https://words.attic-arcade.example/7')] };
  render(<AllowHosts state={{ ...blankState, listing, incognito: true }} onAllowed={() => undefined} />, room);
  expect(room.querySelector('button')).toBeNull();
  expect(room.textContent).toContain('In a private window no site is allowed for good');
});

test('what is not judged of small copies stands in the box that offers their full size, and the box says that it does', async () => {
  const capture: Came = { way: 'capture', fullSize: false, part: false, largest: null };
  const state = {
    ...blankState,
    listing: { ...blankListing, photos: [link(1200)] },
    views: { p1: viewOf(capture, 160) },
  };
  const room = document.createElement('div');
  const told: boolean[] = [];
  await act(() =>
    render(<AllowHosts state={state} onAllowed={() => undefined} onTold={(now) => told.push(now)} />, room),
  );
  expect(room.textContent).toContain('Photo 1: read from a copy on the page. Its size and sharpness');
  await act(() =>
    [...room.querySelectorAll('button')].find(({ textContent }) => textContent === 'Stay with the copies')?.click(),
  );
  expect(room.textContent).toMatch(/^Read from small copies\./);
  expect(told).toEqual([true, false]);
});
