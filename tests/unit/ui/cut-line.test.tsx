// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buildCase } from '../../../src/case';
import { noAdjustment } from '../../../src/photo/adjustment-types';
import { LookByHand } from '../../../src/ui/parts/LookByHand';
import { strings } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { listingOf } from '../case/sample-listing';

const room = document.createElement('div');
beforeEach(() => document.body.append(room));
afterEach(() => render(null, room));

const corner = (x: number, y: number) => ({ x, y });
const read = photoRead('p3', {
  lines: [
    {
      id: 'p3-line-1',
      photoId: 'p3',
      quad: [corner(400, 300), corner(520, 300), corner(520, 330), corner(400, 330)],
      stampScore: 0.9,
      engine: 'net',
      lattice: { steps: [] },
      free: { text: 'KV0915', probability: 0.95 },
      measurements: [],
    },
  ],
});

test('a part that cuts a line says so before it is read, and takes the whole line in at a press', async () => {
  const kase = buildCase({
    listing: listingOf('Ondrasse Carryall 30', 'A bag.'),
    photos: [read],
    corrections: [],
    makers: [],
    now: '2026-03-01',
  });
  const asked: unknown[] = [];
  await act(() =>
    render(
      <LookByHand
        file="blob:none"
        number={3}
        start={{ ...noAdjustment, crop: [0.25, 0.25, 0.4, 0.45] }}
        kase={kase}
        photoId="p3"
        byHand={{ type: () => undefined, correct: () => undefined, undo: () => undefined }}
        onRead={async ({ crop }) => {
          asked.push(crop);
          return null;
        }}
        onClose={() => undefined}
        onMeasure={() => undefined}
      />,
      room,
    ),
  );
  expect(room.textContent).toContain(strings.photos.cuts('KV0915'));
  const press = (words: string) =>
    act(() => [...room.querySelectorAll('button')].find(({ textContent }) => textContent === words)?.click());
  await press(strings.photos.takeIn);
  expect(room.textContent).not.toContain(strings.photos.cuts('KV0915'));
  await press(strings.photos.read);
  expect(asked).toEqual([[0.25, 0.25, 565 / 1200, 0.45]]);
});
