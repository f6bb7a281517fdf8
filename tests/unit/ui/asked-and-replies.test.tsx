// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { buildCase } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { Replies } from '../../../src/ui/message/Replies';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { listingOf } from '../case/sample-listing';
import { readPhoto } from '../check/sample';

const kase = buildCase({
  listing: listingOf('Ondrasse Carryall 30, 1987', 'Date code KV0915.', 1),
  photos: [],
  corrections: [],
  makers: builtInMakers,
  now: '2026-01-15T10:00:00Z',
});
const room = document.createElement('div');
beforeEach(() => document.body.append(room));
afterEach(() => {
  render(null, room);
  room.remove();
  vi.unstubAllGlobals();
});
const button = (words: string) => [...room.querySelectorAll('button')].find(({ textContent }) => textContent === words);

test('what goes into the copied message is noted as asked, and what was asked says when', async () => {
  vi.stubGlobal('navigator', { clipboard: { writeText: async () => undefined } });
  const [first, second] = kase.questions;
  const onAsked = vi.fn();
  const asked = { questions: [{ id: first!.id, at: '2026-03-03T12:00:00.000Z' }], onAsked };
  await act(() => render(<CaseView kase={kase} pictureOfLine={() => null} asked={asked} />, room));
  const [told, untold] = [...room.querySelectorAll('.questions > li')].map(({ textContent }) => textContent);
  expect(told).toContain('asked on 3 March 2026');
  expect(untold).not.toContain('asked on');
  await act(() => room.querySelectorAll<HTMLInputElement>('.questions input[type=checkbox]')[0]?.click());
  await act(async () => button('Copy the message')?.click());
  expect(onAsked.mock.calls).toHaveLength(1);
  expect(onAsked.mock.calls[0]?.[0]).not.toContain(first!.id);
  expect(onAsked.mock.calls[0]?.[0]).toContain(second!.id);
});

test('a message that was not copied asks nothing', async () => {
  vi.stubGlobal('navigator', { clipboard: { writeText: () => Promise.reject(new Error('refused')) } });
  const onAsked = vi.fn();
  await act(() => render(<CaseView kase={kase} pictureOfLine={() => null} asked={{ questions: [], onAsked }} />, room));
  await act(async () => button('Copy the message')?.click());
  expect(onAsked).not.toHaveBeenCalled();
});

test('replies stand with their days, and a pasted one is handed on and leaves the field when it was kept', async () => {
  const kept: string[] = [];
  let works = false;
  await act(() =>
    render(
      <Replies
        replies={[{ at: '2026-03-02T12:00:00.000Z', text: 'It was made in <b>1994</b>.' }]}
        onReply={async (text) => {
          if (works) kept.push(text);
          return works;
        }}
      />,
      room,
    ),
  );
  expect(room.querySelector('.replies')?.textContent).toContain('It was made in <b>1994</b>.');
  const field = room.querySelector('textarea')!;
  await act(() => {
    field.value = 'From my aunt.';
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await act(async () => button('Keep the reply')?.click());
  expect(field.value).toBe('From my aunt.');
  works = true;
  await act(async () => button('Keep the reply')?.click());
  expect([kept, field.value]).toEqual([['From my aunt.'], '']);
});

test('where nobody replied, no list of replies stands, and the part is named by what it is for', async () => {
  await act(() => render(<Replies replies={[]} onReply={async () => true} />, room));
  expect(room.querySelector('summary')?.textContent).toBe('The seller replied? Add it here');
  expect(room.querySelector('ol')).toBeNull();
});

test('the length that a site takes is offered as it was said, and said anew by typing', async () => {
  const keep = vi.fn();
  await act(() => render(<CaseView kase={kase} pictureOfLine={() => null} limit={{ most: 500, keep }} />, room));
  const field = room.querySelector<HTMLInputElement>('.message-limit input')!;
  expect(field.value).toBe('500');
  await act(() => {
    field.value = '700';
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
  expect(keep).toHaveBeenLastCalledWith(700);
});

test('small copies are told of in one place', async () => {
  const came = { way: 'capture', fullSize: false, part: false, largest: null } as const;
  const copied = { ...kase, photos: [readPhoto('p1', { came })] };
  const notLookedAt = () => room.querySelector('[data-part="not-looked-at"]')?.textContent;
  await act(() => render(<CaseView kase={copied} pictureOfLine={() => null} />, room));
  expect(notLookedAt()).toContain('read from a copy on the page');
  await act(() => render(<CaseView kase={copied} pictureOfLine={() => null} copiesTold />, room));
  expect(notLookedAt()).not.toContain('read from a copy on the page');
});
