// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { buildCase, type Correction, correct, undo } from '../../../src/case';
import { PartTags } from '../../../src/ui/parts/PartTags';
import { PhotoStrip } from '../../../src/ui/parts/PhotoStrip';
import { chooseLanguage } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { listingOf } from '../case/sample-listing';
import { viewOf } from './sample-photos';

const listing = listingOf('Ondrasse Carryall 30', 'Width 30 cm.', 2);
const photos = [photoRead('p1'), photoRead('p2')];
let corrections: Correction[] = [];
const show = (
  element: (kase: ReturnType<typeof buildCase>, byHand: Parameters<typeof PartTags>[0]['byHand']) => preact.JSX.Element,
) => {
  const draw = () => {
    const kase = buildCase({ listing, photos, corrections, makers: [], now: '2026-03-01T10:00:00.000Z' });
    const byHand = {
      type: () => undefined,
      correct: (made: Parameters<typeof correct>[1]) => {
        corrections = correct(corrections, made);
        draw();
      },
      undo: (id: string) => {
        corrections = undo(corrections, id);
        draw();
      },
    };
    act(() => render(element(kase, byHand), document.body));
  };
  draw();
};
const said = () => corrections.map((one) => (one.of === 'seen' ? one.to?.value : null));

afterEach(() => {
  render(null, document.body);
  corrections = [];
  chooseLanguage('en');
});

it('a photo in the strip is tagged by one key, says so, and the key takes it back', () => {
  const views = { p1: { ...viewOf('p1'), thumbnail: 'data:image/webp;base64,AAAA' } };
  show((kase, byHand) => (
    <PhotoStrip
      kase={kase}
      views={views}
      stamped={new Set()}
      byHand={byHand}
      here={() => true}
      onLook={() => {}}
      onRemove={() => {}}
    />
  ));
  const photo = () => document.querySelector<HTMLElement>('[data-photo=p1]')!;
  const press = (key: string) =>
    act(() => void photo().dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })));
  press('1');
  press('0');
  press('x');
  expect(said()).toEqual(['body', 'stamp']);
  expect(photo().parentElement?.textContent).toContain('shows the front, the stamp');
  press('1');
  expect(said()).toEqual(['stamp']);
});

it('a part is named by a press, or from the list of all others', () => {
  show((kase, byHand) => <PartTags kase={kase} photoId="p2" byHand={byHand} />);
  const button = (part: string) => document.querySelector<HTMLElement>(`[data-part-tag="${part}"]`)!;
  act(() => button('lining').click());
  expect(button('lining').getAttribute('aria-pressed')).toBe('true');
  const others = document.querySelector('select')!;
  act(() => {
    others.value = 'zip';
    others.dispatchEvent(new Event('change', { bubbles: true }));
  });
  expect(said()).toEqual(['lining', 'zip']);
  expect(button('zip').getAttribute('aria-pressed')).toBe('true');
  act(() => button('lining').click());
  expect(said()).toEqual(['zip']);
});
