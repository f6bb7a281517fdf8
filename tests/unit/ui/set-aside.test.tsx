// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { buildCase, type Case, correct, type NewCorrection, undo } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { DossierDocument } from '../../../src/ui/dossier/DossierDocument';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { dossierOf } from '../../../src/watch';
import { listingOf } from '../case/sample-listing';
import { sampleRecord } from '../watch/sample-case';

const room = document.createElement('div');
let kase: Case;
const build = (corrections: Case['corrections']): Case =>
  buildCase({
    listing: listingOf('Ondrasse Carryall 30, 1987', 'Date code KV0915.', 1),
    photos: [],
    corrections,
    makers: builtInMakers,
    now: '2026-01-15T10:00:00Z',
  });
const show = () =>
  act(() => {
    const change = (corrections: Case['corrections']) => {
      kase = build(corrections);
      draw();
    };
    const byHand = {
      type: () => {},
      correct: (made: NewCorrection) => change(correct(kase.corrections, made)),
      undo: (id: string) => change(undo(kase.corrections, id)),
    };
    const draw = () => render(<CaseView kase={kase} pictureOfLine={() => null} byHand={byHand} />, room);
    draw();
  });
beforeEach(() => {
  document.body.append(room);
  kase = build([]);
});
afterEach(async () => {
  await act(() => render(null, room));
  room.remove();
});

const check = 'code-against-claimed-date';
const button = (name: RegExp): HTMLButtonElement => {
  const found = [...room.querySelectorAll('button')].find((one) =>
    name.test(one.getAttribute('aria-label') ?? one.textContent ?? ''),
  );
  if (!found) throw new Error(`no button ${name}`);
  return found;
};
const press = (one: HTMLElement) => act(async () => one.click());

async function setAside(reason: string): Promise<void> {
  await press(room.querySelector<HTMLElement>(`details[data-check="${check}"] button[aria-label^="Set aside"]`)!);
  const field = room.querySelector<HTMLInputElement>('.set-aside-form input')!;
  expect(document.activeElement).toBe(field);
  await act(() => {
    field.value = reason;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

it('is set aside with a reason, folded with it, and taken back where it stands', async () => {
  await show();
  expect(room.querySelector(`details[data-check="${check}"]`)).not.toBeNull();
  await setAside(' ');
  expect(button(/^Set it aside$/).disabled).toBe(true);
  await act(() => button(/^Leave it$/).click());
  await setAside('It is the year of the shop.');
  await press(button(/^Set it aside$/));
  expect(room.querySelector(`details[data-check="${check}"]`)).toBeNull();
  const part = room.querySelector<HTMLDetailsElement>('details[data-part="set-aside"]');
  expect(part?.open).toBe(false);
  expect(part?.textContent).toMatch(/^Set aside by you.*It is the year of the shop\./);
  expect(room.querySelector('[data-line="against"]')?.textContent).toContain('You set something aside');
  // The keyboard stays near what it worked on.
  expect(document.activeElement?.tagName).toBe('SUMMARY');
  await press(button(/^Undo setting aside/));
  expect(room.querySelector(`details[data-check="${check}"]`)).not.toBeNull();
  expect(room.querySelector('details[data-part="set-aside"]')).toBeNull();
});

it('has the keyboard in its field before the next key arrives', async () => {
  await show();
  // Without act, which would run what the browser runs a frame later.
  room.querySelector<HTMLElement>(`details[data-check="${check}"] button[aria-label^="Set aside"]`)!.click();
  await Promise.resolve();
  expect(document.activeElement).toBe(room.querySelector('.set-aside-form input'));
});

it('is named in the dossier with its reason', async () => {
  await show();
  await setAside('It is the year of the shop.');
  await press(button(/^Set it aside$/));
  const dossier = dossierOf({ record: sampleRecord(), case: kase, pictures: [] });
  render(<DossierDocument dossier={dossier} />, room);
  const section = room.querySelector('[aria-labelledby="dossier-aside"]');
  expect(section?.querySelector('li')?.dataset.check).toBe(check);
  expect(section?.textContent).toContain('Your reason: It is the year of the shop.');
  expect(room.querySelector(`article[data-check="${check}"]`)).toBeNull();
});
