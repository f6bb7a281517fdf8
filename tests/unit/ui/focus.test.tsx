// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buildCase, type Correction, correct, typedCode } from '../../../src/case';
import type { PhotoRead } from '../../../src/photo';
import { type Adjustment, noAdjustment } from '../../../src/photo/adjustment-types';
import { succeed } from '../../../src/problem';
import type { Stage } from '../../../src/ui/panel/state';
import { LookByHand } from '../../../src/ui/parts/LookByHand';
import { Progress } from '../../../src/ui/parts/Progress';
import { StampSection } from '../../../src/ui/parts/StampSection';
import { strings } from '../../../src/words';
import { listingOf } from '../case/sample-listing';
import { viewOf } from './sample-photos';

const room = document.createElement('div');
beforeEach(() => document.body.append(room));
afterEach(() => render(null, room));

const nothing = () => undefined;
const button = (words: string) => [...room.querySelectorAll('button')].find(({ textContent }) => textContent === words);
const focused = () => document.activeElement?.textContent;

test('the buttons of the reading change places, and the focus stays among them', async () => {
  const show = (stage: Stage) =>
    act(() =>
      render(
        <Progress stage={stage} copies={{ all: 0, small: 0 }} onStop={nothing} onGoOn={nothing} onAgain={nothing} />,
        room,
      ),
    );
  await show({ kind: 'done', read: 2, of: 2, late: 0 });
  await act(() => button(strings.stage.again)?.focus());
  await show({ kind: 'page' });
  expect(focused()).toBe(strings.stage.stop);
  await show({ kind: 'done', read: 2, of: 2, late: 0 });
  expect(focused()).toBe(strings.stage.again);
});

test('a focus that was elsewhere is left where it is', async () => {
  const show = (stage: Stage) =>
    act(() =>
      render(
        <>
          <input id="elsewhere" />
          <Progress stage={stage} copies={{ all: 0, small: 0 }} onStop={nothing} onGoOn={nothing} onAgain={nothing} />
        </>,
        room,
      ),
    );
  await show({ kind: 'done', read: 2, of: 2, late: 0 });
  await act(() => button(strings.stage.again)?.focus());
  await act(() => room.querySelector('input')?.focus());
  await show({ kind: 'page' });
  expect(document.activeElement?.id).toBe('elsewhere');
  await act(() => (document.activeElement as HTMLElement).blur());
  await show({ kind: 'done', read: 2, of: 2, late: 0 });
  expect(document.activeElement).toBe(document.body);
});

test('a typed code that is removed leaves the focus where the next one is typed', async () => {
  const listing = listingOf('Ondrasse Carryall 30', '', 0);
  const show = (codes: string[]) => {
    const corrections = codes.reduce<Correction[]>((list, code) => correct(list, typedCode(code)), []);
    const kase = buildCase({ listing, photos: [], corrections, makers: [], now: '2026-01-15T10:00:00Z' });
    return act(() =>
      render(
        <StampSection
          kase={kase}
          pictureOfLine={() => null}
          byHand={{ type: nothing, correct: nothing, undo: nothing }}
        />,
        room,
      ),
    );
  };
  await show(['KV0915']);
  await act(() => button(strings.stamp.remove('KV0915'))?.focus());
  await show([]);
  expect(document.activeElement?.closest('.type-code')).not.toBeNull();
});

/** A case whose third photo is looked at. */
const looked = (photos: PhotoRead[]) => ({
  kase: buildCase({ listing: listingOf('Bag', 'A bag.'), photos, corrections: [], makers: [], now: '2026-03-01' }),
  photoId: 'p3',
  byHand: { type: nothing, correct: nothing, undo: nothing },
});

test('the part to read is set with the arrow keys, and read as it was set', async () => {
  const asked: Adjustment[] = [];
  const view = viewOf('p3', ['KV0915']);
  await act(() =>
    render(
      <LookByHand
        file="blob:none"
        number={3}
        start={noAdjustment}
        {...looked([view.read])}
        onRead={async (adjustment) => {
          asked.push(adjustment);
          return succeed(view);
        }}
        onClose={nothing}
        onMeasure={() => undefined}
      />,
      room,
    ),
  );
  const corner = room.querySelector<HTMLElement>(`[aria-label="${strings.photos.zone}, ${strings.overlay.topLeft}"]`);
  const press = (key: string) =>
    act(() => {
      corner?.dispatchEvent(new KeyboardEvent('keydown', { key, shiftKey: true, bubbles: true, cancelable: true }));
    });
  await press('ArrowRight');
  await press('ArrowDown');
  await act(() => button(strings.photos.read)?.click());
  expect(asked).toEqual([{ ...noAdjustment, crop: [0.02, 0.02, 1, 1] }]);
  const status = () => [...room.querySelectorAll('[role="status"]')].map((one) => one.textContent);
  await expect.poll(status).toContain('1 line found. KV0915');
  expect(room.querySelector('.overlay svg[aria-label="The line that reads KV0915"]')).not.toBeNull();
});

test('a photo that is opened by hand takes the focus, and Escape closes it', async () => {
  let closed = 0;
  await act(() =>
    render(
      <LookByHand
        file="blob:none"
        number={3}
        start={{ ...noAdjustment, invert: true }}
        {...looked([])}
        onRead={async () => null}
        onClose={() => closed++}
        onMeasure={() => undefined}
      />,
      room,
    ),
  );
  expect(focused()).toBe(strings.photos.byHand(3));
  expect(button(strings.photos.invert)?.getAttribute('aria-pressed')).toBe('true');
  await act(() => {
    document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  });
  expect(closed).toBe(1);
});
