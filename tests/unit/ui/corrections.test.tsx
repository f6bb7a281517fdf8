// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buildCase, type Case, type Correction, correct, type NewCorrection, undo } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { strings } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { listingOf } from '../case/sample-listing';
import { stampLine } from '../check/sample';

const listing = listingOf('Ondrasse Carryall 30', 'Ondrasse Carryall 30, made in 1987.', 2);
const photos = [photoRead('p1'), photoRead('p2', { lines: [stampLine('p2', 'KV0915')] })];

const room = document.createElement('div');
let corrections: Correction[] = [];
let kase: Case;

/** The case as the panel shows it: each press changes the list, and the case is made anew. */
function show(part = {}): Promise<void> {
  kase = buildCase({ listing, photos, corrections, makers: builtInMakers, now: '2026-01-15T10:00:00Z', ...part });
  const change = (list: Correction[]) => {
    corrections = list;
    show(part);
  };
  const byHand = {
    type: () => undefined,
    correct: (made: NewCorrection) => change(correct(corrections, made)),
    undo: (id: string) => change(undo(corrections, id)),
  };
  return act(() => render(<CaseView kase={kase} pictureOfLine={() => null} byHand={byHand} />, room));
}
const named = (name: string) =>
  [...room.querySelectorAll('button')].find(
    (one) => (one.ariaLabel ?? one.getAttribute('aria-label') ?? one.textContent) === name,
  );
const press = async (name: string) => {
  const button = named(name);
  if (!button) throw new Error(`no button ${name}`);
  button.focus();
  await act(() => button.click());
};
const listed = () => [...room.querySelectorAll('.corrections li')].map((one) => one.firstChild?.textContent);

beforeEach(() => {
  document.body.append(room);
  corrections = [];
});
afterEach(() => {
  render(null, room);
  room.remove();
});

test('a line that is no code is left out, said, and taken back', { timeout: 60_000 }, async () => {
  await show();
  expect(kase.decodings).toHaveLength(1);
  await press(strings.byHand.noCode);
  expect(kase.decodings).toEqual([]);
  expect(listed()).toEqual(['In photo 2, KV0915 is not taken for a code.']);
  await press(strings.byHand.undoNamed('In photo 2, KV0915 is not taken for a code.'));
  expect(kase.decodings).toHaveLength(1);
  expect(room.querySelector('.corrections')).toBeNull();
  expect(document.activeElement?.textContent).toBe('What the listing claims');
});

test('a claim is left out in every place where it stands, and each is taken back', async () => {
  await show();
  const statement = room.querySelector('.claims td div')?.firstChild?.textContent ?? '';
  const before = kase.claims.length;
  await press(strings.byHand.leaveOutNamed(statement));
  expect(kase.claims.length).toBeLessThan(before);
  expect(listed()[0]).toMatch(/^Left out of what the listing claims: “.+”\.$/);
});

test('what a correction belonged to is said where it is gone', async () => {
  await show();
  await press(strings.byHand.noCode);
  const without = { ...listing, photos: listing.photos.slice(0, 1) };
  await show({ listing: without, photos: photos.slice(0, 1) });
  const item = room.querySelector('.corrections li');
  expect(item?.textContent).toContain('In a photo that is gone, KV0915 is not taken for a code.');
  expect(item?.textContent).toContain('belongs to a photo that the listing does not show any more.');
  expect(room.querySelector('.not-read')?.textContent).not.toContain('something that you set');
});

test('nothing can be corrected where the case is only shown', async () => {
  kase = buildCase({ listing, photos, corrections: [], makers: builtInMakers, now: '2026-01-15T10:00:00Z' });
  await act(() => render(<CaseView kase={kase} pictureOfLine={() => null} />, room));
  expect(named(strings.byHand.noCode)).toBeUndefined();
  expect([...room.querySelectorAll('button')].filter((one) => one.textContent === strings.byHand.leaveOut)).toEqual([]);
});
