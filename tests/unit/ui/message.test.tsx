// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { buildCase, type Case } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { listingOf } from '../case/sample-listing';

const now = '2026-01-15T10:00:00Z';
const kase = buildCase({
  listing: listingOf('Ondrasse Carryall 30, 1987', 'Date code KV0915.', 1),
  photos: [],
  corrections: [],
  makers: builtInMakers,
  now,
});
const room = document.createElement('div');
beforeEach(() => document.body.append(room));
afterEach(() => {
  render(null, room);
  room.remove();
});
const show = (one: Case = kase) => act(() => render(<CaseView kase={one} pictureOfLine={() => null} />, room));
const part = () => room.querySelector<HTMLDetailsElement>('details[data-part="message"]') as HTMLDetailsElement;
const text = () => part().querySelector<HTMLTextAreaElement>('.message-text textarea') as HTMLTextAreaElement;
const numbered = () =>
  text()
    .value.split('\n')
    .filter((line) => /^\d+\. /.test(line));
const ticks = () => [...part().querySelectorAll<HTMLInputElement>('input[type=checkbox]')];
const button = (name: RegExp, within: Element = part()) => {
  const found = [...within.querySelectorAll('button')].find((one) =>
    name.test(one.getAttribute('aria-label') ?? one.textContent ?? ''),
  );
  if (!found) throw new Error(`no button ${name}`);
  return found;
};
const write = (field: HTMLTextAreaElement | HTMLInputElement, value: string) =>
  act(() => {
    field.value = value;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
const press = (one: HTMLElement) => act(async () => one.click());

describe('the message', () => {
  it('is one step from the next step, folded until then, and seen before it is copied', async () => {
    await show();
    expect(part().open).toBe(false);
    await press(button(/^Look at the message$/, room));
    expect(part().open).toBe(true);
    expect(document.activeElement?.textContent).toBe('Message to the seller');
    expect(numbered()).toHaveLength(kase.questions.length);
    expect(kase.questions.length).toBeGreaterThan(2);
  });

  it('leaves out what is not ticked, and asks in the order that the buyer gives', async () => {
    await show();
    const [first = '', second = ''] = numbered().map((line) => line.slice(3));
    await press(button(/^Move up/));
    expect(numbered().map((line) => line.slice(3))[0]).toBe(second);
    await press(ticks()[1] as HTMLInputElement);
    expect(text().value).not.toContain(first);
  });

  it('takes a question from its finding out of the message and back', async () => {
    await show();
    const toggle = button(
      /^In the message$/,
      room.querySelector('[data-check="code-against-claimed-date"]') as Element,
    );
    expect(toggle.getAttribute('aria-pressed')).toBe('true');
    const before = numbered().length;
    await press(toggle);
    expect(numbered()).toHaveLength(before - 1);
    expect(toggle.getAttribute('aria-pressed')).toBe('false');
  });

  it('asks in the buyer’s own words, and takes a question of their own', async () => {
    await show();
    await press(button(/^Change the words/));
    await write(part().querySelector('.questions textarea') as HTMLTextAreaElement, 'How do you know the year?');
    expect(numbered()[0]).toBe('1. How do you know the year?');
    await write(part().querySelector('#own-question') as HTMLInputElement, 'Is the  strap long enough?');
    await press(button(/^Add it$/));
    expect(numbered().at(-1)).toMatch(/^\d+\. Is the strap long enough\?$/);
    await press(button(/^As it was$/));
    expect(text().value).not.toContain('How do you know the year?');
  });

  it('keeps what was edited by hand; a later tick changes nothing until it is told to', async () => {
    await show();
    await write(text(), 'My own words.');
    await press(ticks()[0] as HTMLInputElement);
    await press(ticks()[0] as HTMLInputElement);
    expect(text().value).toBe('My own words.');
    await write(part().querySelector('#own-question') as HTMLInputElement, 'Is it heavy?');
    await press(button(/^Add it$/));
    expect(text().value).toBe('My own words.');
    await press(button(/^Add what is new at the end$/));
    expect(text().value).toMatch(/^My own words\.\n[\s\S]*\d+\. Is it heavy\?/);
    await press(ticks()[0] as HTMLInputElement);
    await press(button(/^Write it anew$/));
    expect(text().value).toMatch(/^Hello Mina,/);
  });

  it('is kept while the case is read on', async () => {
    await show();
    await press(ticks()[0] as HTMLInputElement);
    const before = text().value;
    await show({ ...kase, judgedAt: '2026-01-15T10:05:00Z' });
    expect(text().value).toBe(before);
  });

  it('copies exactly what is seen, and selects it where the browser does not allow that', async () => {
    await show();
    await write(text(), 'Exactly this.');
    const writeText = vi.fn(async (_text: string) => {});
    vi.stubGlobal('navigator', { ...navigator, clipboard: { writeText } });
    await press(button(/^Copy the message$/));
    expect(writeText.mock.calls).toEqual([['Exactly this.']]);
    writeText.mockRejectedValueOnce(new Error('not allowed'));
    await press(button(/^Copy the message$/));
    expect(part().textContent).toContain('press Ctrl C');
    expect(text().selectionEnd).toBe('Exactly this.'.length);
    vi.unstubAllGlobals();
  });

  it('goes in parts where the marketplace takes less, each copied on its own', async () => {
    await show();
    const writeText = vi.fn(async (_text: string) => {});
    vi.stubGlobal('navigator', { ...navigator, clipboard: { writeText } });
    const whole = text().value;
    await write(part().querySelector('.message-limit input') as HTMLInputElement, '300');
    const parts = [...part().querySelectorAll('.message-parts .message-own')].map((one) => one.textContent ?? '');
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.every((one) => one.length <= 300)).toBe(true);
    for (const question of numbered()) expect(parts.filter((one) => one.includes(question))).toHaveLength(1);
    await press(button(/^Copy part 2$/));
    expect(writeText.mock.calls).toEqual([[parts[1]]]);
    expect(part().querySelector('[role=status]:not(:empty)')?.textContent).toMatch(/^Part 2/);
    await write(part().querySelector('.message-limit input') as HTMLInputElement, '');
    await press(button(/^Copy the message$/));
    expect(writeText.mock.calls.at(-1)).toEqual([whole]);
    vi.unstubAllGlobals();
  });
});
