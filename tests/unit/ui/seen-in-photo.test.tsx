// @vitest-environment jsdom
import { render } from 'preact';
import { useState } from 'preact/hooks';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buildCase, type Correction, correct, findingsOf, undo } from '../../../src/case';
import { type Observation, observed, type PhotoRead } from '../../../src/photo';
import { noAdjustment } from '../../../src/photo/adjustment-types';
import { LookByHand } from '../../../src/ui/parts/LookByHand';
import { valueWords } from '../../../src/ui/seen-words';
import { strings } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { listingOf } from '../case/sample-listing';

const room = document.createElement('div');
beforeEach(() => document.body.append(room));
afterEach(() => render(null, room));

const seen = (what: string, part: Partial<Observation>): Observation => observed('p3', what, null, part);

test('what was measured is told with its unit and its uncertainty', () => {
  expect(
    [
      seen('longer-side', { value: 1200, uncertainty: 0, unit: 'px' }),
      seen('sharpness', { value: 0.12345, uncertainty: 0.0234, unit: 'share' }),
      seen('ground-noise', { value: 1.9, unit: 'step', by: 'hand' }),
      seen('too-weak', { value: false }),
      seen('watermark', { value: 'cellar-finds.example' }),
      seen('hash', {}),
    ].map(valueWords),
  ).toEqual(['1,200 px', '0.123 ± 0.023', '1.90 of 255', 'no', 'cellar-finds.example', 'not measured']);
});

const read: PhotoRead = {
  ...photoRead('p3'),
  observations: [
    seen('watermark', { value: 'cellar-finds.example' }),
    seen('ground-lightness', { value: 240, unit: 'step' }),
    seen('hash', { value: 'ccd6372b0f0f0707' }),
  ],
};
const caseOf = (corrections: Correction[]) =>
  buildCase({
    listing: listingOf('Ondrasse Carryall 30', 'A bag.'),
    photos: [read],
    corrections,
    makers: [],
    now: '2026-03-01',
  });

/** The photo's view as the panel keeps it: what is set goes into one list, from which the case is made anew. */
let kept: Correction[] = [];
function Desk() {
  const [corrections, setCorrections] = useState(kept);
  kept = corrections;
  return (
    <LookByHand
      file="blob:none"
      number={3}
      start={noAdjustment}
      kase={caseOf(corrections)}
      photoId="p3"
      byHand={{
        type: () => undefined,
        correct: (made) => setCorrections((list) => correct(list, made)),
        undo: (id) => setCorrections((list) => undo(list, id)),
      }}
      onRead={async () => null}
      onClose={() => undefined}
      onMeasure={() => undefined}
    />
  );
}
const show = async () => {
  kept = [];
  await act(() => render(<Desk />, room));
};
const named = (words: string) =>
  [...room.querySelectorAll<HTMLElement>('button, [role=slider]')].find(
    (one) => (one.getAttribute('aria-label') ?? one.textContent) === words,
  );
const press = (words: string) => act(() => named(words)?.click());
const watermark = 'Web address in the photo: cellar-finds.example';
const doubts = () => findingsOf(caseOf(kept)).filter(({ check }) => check === 'photo-watermark').length;

test('what is not so is left out, counts no more, and comes back', async () => {
  await show();
  expect(doubts()).toBe(1);
  await press(strings.byHand.leaveOutNamed(watermark));
  expect(doubts()).toBe(0);
  expect(room.querySelector('.seen-in-photo s')?.textContent).toBe(watermark);
  await press(strings.byHand.undoNamed('Web address in the photo'));
  expect(kept).toEqual([]);
  expect(doubts()).toBe(1);
});

test('a ground can be left out, the photo’s own hash cannot', async () => {
  await show();
  expect(named(strings.byHand.leaveOutNamed('Lightness of the ground: 240 of 255'))).toBeDefined();
  expect(
    [...room.querySelectorAll('li')].find((row) => row.textContent?.startsWith('Hash'))?.querySelector('button'),
  ).toBeNull();
});

test('a place is put on the photo by keyboard, says that a hand set it, and survives a new reading', async () => {
  await show();
  await press(strings.observed.placeNamed(watermark));
  const whole = named(`Web address in the photo, ${strings.overlay.whole}`);
  await act(() => {
    whole?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', shiftKey: true, bubbles: true }));
  });
  await press(strings.observed.set);
  const [made] = kept;
  expect(made?.of === 'seen' && made.to?.where?.points[0]?.x).toBeCloseTo(0.37);
  expect(room.querySelector('.seen-in-photo')?.textContent).toContain(strings.observed.byHand);
  // The photo is read again: its observations are new, what the hand set stands in place of the same one.
  const again = caseOf(JSON.parse(JSON.stringify(kept)) as Correction[]);
  expect(again.skipped.filter(({ code }) => code.startsWith('correction-'))).toEqual([]);
  expect(doubts()).toBe(1);
  await press(strings.byHand.undoNamed(watermark));
  expect(kept).toEqual([]);
});

test('what the machine did not see is added with its place', async () => {
  await show();
  const form = room.querySelector<HTMLFormElement>('form')!;
  const input = form.querySelector('input')!;
  await act(() => {
    input.value = 'KV0915';
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await act(() => form.requestSubmit());
  await press(strings.observed.set);
  expect(kept).toMatchObject([{ of: 'seen', target: null, to: { what: 'code', value: 'KV0915' } }]);
  expect(caseOf(kept).decodings.map(({ code }) => code)).toContain('KV0915');
});

test('Escape lets go of a place before it closes the photo', async () => {
  await show();
  await press(strings.observed.placeNamed(watermark));
  await act(() => {
    named(strings.observed.set)?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  });
  expect(named(strings.observed.set)).toBeUndefined();
  expect(room.querySelector('.by-hand')).not.toBeNull();
});
