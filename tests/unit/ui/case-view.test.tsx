// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test, vi } from 'vitest';
import { buildCase } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { strings } from '../../../src/words';
import { listingOf } from '../case/sample-listing';

const now = '2026-01-15T10:00:00Z';
const room = document.createElement('div');
afterEach(() => render(null, room));

async function show(language: string | null, makers: MakerFile[] = builtInMakers): Promise<void> {
  const listing = listingOf('Ondrasse Carryall 30', 'Date code KV0915.', 1, { language });
  const kase = buildCase({ listing, photos: [], corrections: [], makers, now });
  await act(() => render(<CaseView kase={kase} pictureOfLine={() => null} />, room));
}

const choice = (): HTMLSelectElement => {
  const select = room.querySelector('select');
  if (!select) throw new Error('no choice of language');
  return select;
};

/** What the button puts on the clipboard. */
async function copied(): Promise<string> {
  const writeText = vi.fn(async (_text: string) => {});
  vi.stubGlobal('navigator', { ...navigator, clipboard: { writeText } });
  const button = [...room.querySelectorAll('button')].find((one) => one.textContent === strings.message.copy);
  await act(() => button?.click());
  vi.unstubAllGlobals();
  return writeText.mock.calls[0]?.[0] ?? '';
}

test.each([
  ['fr-BE', 'fr', 'Bonjour Mina'],
  ['de', 'de', 'Guten Tag Mina'],
  ['ja', 'ja', 'Mina'],
  ['en-GB', 'en', 'Hello Mina,'],
  ['pt', 'en', 'Hello Mina,'],
  [null, 'en', 'Hello Mina,'],
])('the message to the seller of a listing in %s is written in %s', async (listed, written, greeting) => {
  await show(listed);
  expect(choice().value).toBe(written);
  expect((await copied()).split('\n')[0]).toContain(greeting);
});

test('another language can be chosen for the message', async () => {
  await show('fr');
  const select = choice();
  expect([...select.options].map(({ value }) => value)).toEqual(['en', 'fr', 'de', 'it', 'es', 'nl', 'ja']);
  expect(select.labels?.[0]?.textContent).toContain(strings.message.language);
  await act(() => {
    select.value = 'en';
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
  expect((await copied()).split('\n')[0]).toBe('Hello Mina,');
});

test('an invented maker file says so beside its name; another does not', async () => {
  await show('en');
  expect(room.textContent).toContain(strings.answer.byFile('Ondrasse', true));
  await show(
    'en',
    builtInMakers.map(({ invented: _, ...file }) => file),
  );
  expect(room.textContent).toContain(strings.answer.byFile('Ondrasse', false));
  expect(room.querySelector('.answer')?.textContent).not.toContain('invented');
});

test('a code’s reading names the country of its plant in words', async () => {
  await show('en');
  const rows = [...room.querySelectorAll('.code-rows > div')].map((row) => row.textContent);
  expect(rows.some((words) => words?.includes('KV') && words.includes('Belgium'))).toBe(true);
  expect(room.textContent).not.toMatch(/\bBE\b/);
});
