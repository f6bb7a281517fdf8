// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { buildCase, type Case, correct, undo } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { listingOf } from '../case/sample-listing';
import { readPhoto, stampLine } from '../check/sample';

const room = document.createElement('div');
afterEach(() => act(() => render(null, room)));

const build = (corrections: Case['corrections']): Case =>
  buildCase({
    listing: listingOf('Ondrasse bag and wallet', 'The bag is from 1995. Brass hardware.', 1),
    photos: [readPhoto('p1', { lines: [stampLine('p1', 'KV0915')] })],
    corrections,
    makers: builtInMakers,
    now: '2026-01-15T10:00:00Z',
  });
const show = (kase: Case) => {
  const byHand = {
    type: () => {},
    undo: (id: string) => show(build(undo(kase.corrections, id))),
    correct: (made: Parameters<typeof correct>[1]) => show(build(correct(kase.corrections, made))),
  };
  render(<CaseView kase={kase} pictureOfLine={() => null} byHand={byHand} />, room);
};
const press = (name: string) =>
  act(() => [...room.querySelectorAll('button')].find((one) => one.textContent === name)?.click());
const lot = () => room.querySelector('.lot');

it('two pieces: the buyer chooses which one the answer is for, or says that it is one', async () => {
  await act(() => show(build([])));
  expect(lot()?.textContent).toMatch(/Two pieces are offered here.*“and wallet”.*“Brass hardware”.*price is for all/);
  expect(room.querySelector('.answer h2')?.textContent).toContain('Choose the piece');
  await press('bag');
  expect(lot()?.querySelector('[aria-pressed=true]')?.textContent).toBe('bag');
  expect(room.querySelector('.answer h2')?.textContent).toContain('The listing says 1995');
  await press('wallet');
  expect(room.querySelector('.answer h2')?.textContent).toContain('The listing gives no year for: wallet.');
  await press('It is one piece');
  expect(lot()).toBeNull();
  expect(room.querySelector('.corrections')?.textContent).toContain('You say that it is one piece.');
});

it('a stamp is given to the other piece where it stands, and taken back where that is said', async () => {
  await act(() => show(build([])));
  await press('bag');
  expect(room.querySelector('.answer h2')?.textContent).toContain('January 1995');
  await press('This stamp is on the other piece: wallet');
  expect(room.querySelector('.answer h2')?.textContent).not.toContain('January 1995');
  expect(lot()?.textContent).toContain('The stamp in photo 1 is on: wallet.');
  await press('wallet');
  expect(room.querySelector('.answer h2')?.textContent).toContain('January 1995');
  await press('bag');
  await act(() => lot()?.querySelector<HTMLButtonElement>('.by-hand button')?.click());
  expect(room.querySelector('.answer h2')?.textContent).toContain('January 1995');
});
