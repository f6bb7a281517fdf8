// @vitest-environment jsdom
import { render } from 'preact';
import { useState } from 'preact/hooks';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Where } from '../../../src/photo';
import { cropAround, keepRectangle, moveTo, quadOf } from '../../../src/ui/overlay/move';
import { Overlay } from '../../../src/ui/overlay/Overlay';

const point: Where = { form: 'point', points: [{ x: 0.5, y: 0.5 }] };
const line: Where = {
  form: 'line',
  points: [
    { x: 0.2, y: 0.2 },
    { x: 0.8, y: 0.4 },
  ],
};
const quad = quadOf([0.2, 0.3, 0.6, 0.7]);
const polygon: Where = {
  form: 'polygon',
  points: [
    { x: 0.1, y: 0.1 },
    { x: 0.9, y: 0.1 },
    { x: 0.9, y: 0.5 },
    { x: 0.5, y: 0.9 },
    { x: 0.1, y: 0.5 },
  ],
};
const rounded = ({ points }: Where) => points.map(({ x, y }) => [x, y].map((share) => Math.round(share * 1000) / 1000));

describe('moving a place', () => {
  it('moves the point that is held, and no other, inside the picture', () => {
    expect(rounded(moveTo(line, 1, { x: 1.4, y: -0.3 }))).toEqual([
      [0.2, 0.2],
      [1, 0],
    ]);
  });

  it('moves the whole without changing its shape, up to the edge of the picture', () => {
    expect(rounded(moveTo(quad, 'whole', { x: 0.5, y: 0.5 }))).toEqual([
      [0.3, 0.3],
      [0.7, 0.3],
      [0.7, 0.7],
      [0.3, 0.7],
    ]);
    expect(rounded(moveTo(quad, 'whole', { x: 9, y: -9 }))).toEqual([
      [0.6, 0],
      [1, 0],
      [1, 0.4],
      [0.6, 0.4],
    ]);
  });

  it.each([
    [0, { x: 0.1, y: 0.2 }, [0.1, 0.2, 0.6, 0.7]],
    [1, { x: 0.9, y: 0.2 }, [0.2, 0.2, 0.9, 0.7]],
    [2, { x: 0.9, y: 0.9 }, [0.2, 0.3, 0.9, 0.9]],
    [3, { x: 0.1, y: 0.9 }, [0.1, 0.3, 0.6, 0.9]],
    [0, { x: 0.9, y: 0.9 }, [0.58, 0.68, 0.6, 0.7]],
    [2, { x: 0, y: 0 }, [0.2, 0.3, 0.22, 0.32]],
  ])('keeps a rectangle one when corner %i goes to %j', (held, to, crop) => {
    const kept = keepRectangle(moveTo(quad, held, to), held);
    expect(cropAround(kept).map((side) => Math.round(side * 1e9) / 1e9)).toEqual(crop);
  });
});

describe('what lies on a photo', () => {
  const room = document.createElement('div');
  let last: Where | null = null;
  let seen: string[] = [];

  function Held({ start, keep }: { start: Where; keep?: typeof keepRectangle }) {
    const [where, setWhere] = useState(start);
    const onMove = (moved: Where) => {
      last = moved;
      setWhere(moved);
    };
    return <Overlay where={where} label="Place" onMove={onMove} {...(keep ? { keep } : {})} />;
  }
  const show = (start: Where, keep?: typeof keepRectangle) =>
    act(() => render(<Held start={start} {...(keep ? { keep } : {})} />, room));
  const handles = () => [...room.querySelectorAll<HTMLElement>('[role="slider"]')];
  const handle = (name: string) => {
    const found = handles().find((one) => one.getAttribute('aria-label') === `Place, ${name}`);
    if (!found) throw new Error(`no handle ${name}`);
    return found;
  };
  const press = (name: string, key: string, more: KeyboardEventInit = {}) =>
    act(() => {
      handle(name).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more }));
    });
  const touch = (name: string, type: string, clientX: number, clientY: number, pointerId = 7) =>
    act(() => {
      const event = new MouseEvent(type, { bubbles: true, cancelable: true, clientX, clientY });
      Object.defineProperty(event, 'pointerId', { value: pointerId });
      handle(name).dispatchEvent(event);
    });

  beforeEach(() => {
    document.body.append(room);
    last = null;
    seen = [];
    room.addEventListener('keydown', ({ key }) => seen.push(key));
    room.addEventListener('pointerdown', () => seen.push('press'));
    vi.spyOn(Element.prototype, 'getBoundingClientRect').mockReturnValue(new DOMRect(100, 50, 400, 200));
  });
  afterEach(() => {
    render(null, room);
    room.remove();
    vi.restoreAllMocks();
  });

  it.each([
    ['a point', point, ['point']],
    ['a line', line, ['all of it', 'start', 'end']],
    ['a quad', quad, ['all of it', 'top left', 'top right', 'bottom right', 'bottom left']],
    ['a polygon', polygon, ['all of it', ...[1, 2, 3, 4, 5].map((number) => `corner ${number} of 5`)]],
  ])('names every handle of %s, and says where it is', async (_name, where, names) => {
    await show(where);
    expect(handles().map((one) => one.getAttribute('aria-label'))).toEqual(names.map((name) => `Place, ${name}`));
    expect(handles().every((one) => one.tabIndex === 0)).toBe(true);
    const { x, y } = where.points[0]!;
    expect(handle(names.at(where.points.length === 1 ? 0 : 1)!).getAttribute('aria-valuetext')).toBe(
      `${x * 100}% from the left, ${y * 100}% from the top`,
    );
  });

  it('moves with the arrow keys, further with Shift, and says where it came to', async () => {
    await show(point);
    await press('point', 'ArrowRight');
    await press('point', 'ArrowUp', { shiftKey: true });
    expect(handle('point').getAttribute('aria-valuetext')).toBe('50.2% from the left, 48% from the top');
    await press('point', 'ArrowLeft', { ctrlKey: true });
    await press('point', 'a');
    expect(rounded(last!)).toEqual([[0.502, 0.48]]);
  });

  it.each([
    ['a point', point, 'point'],
    ['a line', line, 'end'],
    ['a quad', quad, 'bottom left'],
    ['a polygon', polygon, 'corner 3 of 5'],
  ])('is dragged by a handle of %s, which takes the focus and stays under the finger', async (_name, where, name) => {
    await show(where);
    const index = handles().indexOf(handle(name)) - (where.points.length > 1 ? 1 : 0);
    const from = where.points[index]!;
    // Four pixels beside the handle's middle, as fingers are.
    const [startX, startY] = [100 + from.x * 400 + 4, 50 + from.y * 200];
    await touch(name, 'pointerdown', startX, startY);
    expect(document.activeElement).toBe(handle(name));
    await touch(name, 'pointermove', startX + 40, startY - 20);
    await touch(name, 'pointermove', startX + 400, startY, 8);
    await touch(name, 'pointerup', startX + 40, startY - 20);
    await touch(name, 'pointermove', startX + 80, startY);
    const expected = where.points.map((one, at) => (at === index ? { x: from.x + 0.1, y: from.y - 0.1 } : one));
    expect(rounded(last!)).toEqual(
      rounded({ form: 'polygon', points: expected.map(({ x, y }) => ({ x: Math.min(1, x), y })) }),
    );
    expect(seen).not.toContain('press');
  });

  it('goes back where it was when a drag is called off, by Escape or by the browser', async () => {
    await show(quad);
    await touch('top left', 'pointerdown', 180, 110);
    await touch('top left', 'pointermove', 120, 60);
    await press('top left', 'Escape');
    expect(rounded(last!)).toEqual(rounded(quad));
    expect(seen).not.toContain('Escape');
    await touch('all of it', 'pointerdown', 260, 150);
    await touch('all of it', 'pointermove', 300, 150);
    expect(rounded(last!)).not.toEqual(rounded(quad));
    await touch('all of it', 'pointercancel', 300, 150);
    expect(rounded(last!)).toEqual(rounded(quad));
    await press('top left', 'Escape');
    expect(seen).toContain('Escape');
  });

  it('keeps the form that it is given', async () => {
    await show(quad, keepRectangle);
    await press('bottom right', 'ArrowRight', { shiftKey: true });
    expect(rounded(last!)).toEqual([
      [0.2, 0.3],
      [0.62, 0.3],
      [0.62, 0.7],
      [0.2, 0.7],
    ]);
  });

  it('is drawn with its name and without handles where nothing moves it', async () => {
    await act(() => render(<Overlay where={line} label="The line that reads KV0915" />, room));
    expect(handles()).toEqual([]);
    expect(room.querySelector('svg')?.getAttribute('aria-label')).toBe('The line that reads KV0915');
    expect(room.querySelector('polyline')?.getAttribute('points')).toBe('20,20 80,40');
  });
});
