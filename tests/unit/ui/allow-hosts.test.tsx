// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import type { Listing } from '../../../src/listing/types';
import { AllowHosts } from '../../../src/ui/panel/AllowHosts';
import { blankState } from '../../../src/ui/panel/state';
import { blankListing } from '../blank-listing';

function offered(listing: Listing | null): string {
  const room = document.createElement('div');
  render(<AllowHosts state={{ ...blankState, listing }} onAllowed={() => undefined} />, room);
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
