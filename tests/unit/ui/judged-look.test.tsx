// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildCase, type Correction } from '../../../src/case';
import { builtInMakers } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { packing } from '../../../src/store/packing';
import { JudgedLook } from '../../../src/ui/watchlist/JudgedLook';
import type { SavedCase } from '../../../src/watch';
import { lookOf } from '../../../src/watch/look';
import { chooseLanguage } from '../../../src/words';
import { marked, rowOfStitches } from '../../hand-mark';
import { photoRead } from '../../photo-read';
import { blankListing } from '../blank-listing';
import { sampleRecord } from '../watch/sample-case';

const room = document.createElement('div');
beforeEach(() => document.body.append(room));
afterEach(() => {
  render(null, room);
  room.remove();
  chooseLanguage('en');
});

const words = 'Ondrasse Carryall 30, made in 1995, code KV0915. Lined in olive twill.';
const now = '2026-03-01T10:00:00.000Z';
const listing = {
  ...blankListing,
  url: 'https://attic-arcade.example/item/7',
  readAt: now,
  title: [{ value: words, origin: 'json-ld' as const, where: 'name', confidence: 0.9 }],
  text: words,
};
const ondrasse = builtInMakers.find(({ maker }) => maker === 'Ondrasse') as MakerFile;

async function saved(makers: MakerFile[], makerFile: 'same' | 'changed'): Promise<SavedCase> {
  const kase = buildCase({ listing, photos: [], corrections: [], makers: [ondrasse], now });
  const look = await lookOf(kase, { rules: '0.1.0', makers: [ondrasse] }, packing);
  const at = { readAt: now, judgedAt: now, corrections: [], pictures: [], files: [] };
  return { record: sampleRecord(), makers, looks: [{ state: 'readable', look, makerFile, ...at }] };
}
function latestOf({ looks: [look] }: SavedCase) {
  if (look?.state !== 'readable') throw new Error('the look is not readable');
  return look;
}
const show = async (one: SavedCase) => act(() => render(<JudgedLook saved={one} at={0} />, room));

describe('a saved look', () => {
  it('shows what the buyer measured on its photos, and has no such part where nothing was', async () => {
    const one = await saved([ondrasse], 'same');
    await show(one);
    expect(room.querySelector('[data-part=photos]')).toBeNull();
    const photo = { id: 'p1', url: 'https://attic-arcade.example/p1.jpg' };
    const link = { ...photo, alternatives: [], width: null, height: null, alt: '', origins: ['visible' as const] };
    const look = latestOf(one);
    const byHand: Correction = {
      id: 'hand-1',
      ...marked({ url: photo.url, hash: null }, rowOfStitches({ kind: 'length', name: '' }), [
        { what: 'length', value: 400, uncertainty: 3, unit: 'px', where: null },
      ]),
    };
    const held = {
      ...look,
      corrections: [byHand],
      look: { ...look.look, listing: { ...look.look.listing, photos: [link] } },
    };
    await show({ ...one, looks: [held] });
    expect(room.querySelector('[data-part=photos] [data-what=length]')?.textContent).toBe('Length400.0 ± 3.0 px');
  }, 30_000);

  it('shows what its photos’ measures noticed, as the panel does', async () => {
    const one = await saved([ondrasse], 'same');
    const look = latestOf(one);
    const ids = ['p1', 'p2'];
    const link = { alternatives: [], width: null, height: null, alt: '', origins: ['visible' as const] };
    const photos = ids.map((id) => ({ id, url: `https://attic-arcade.example/${id}.jpg`, ...link }));
    const reads = ids.map((id, at) => photoRead(id, { width: 1200 - 400 * at, height: 600 }));
    const noticed = { ...look.look, photos: reads, listing: { ...look.look.listing, photos } };
    await show({ ...one, looks: [{ ...look, look: noticed }] });
    const notes = room.querySelector('[data-part=photos] .photo-notes');
    expect(notes?.querySelector('h3')?.textContent).toBe('Noticed in the photos');
    expect(notes?.textContent).toContain('1,200 × 600');
    expect(notes?.textContent).toContain('800 × 600');
  });

  it('opens a photo that was sent at its own size, and leads back to its small picture', async () => {
    const one = await saved([ondrasse], 'same');
    const look = latestOf(one);
    const chat = { id: `sent-${'a'.repeat(32)}`, from: 'seller-chat' as const, on: '2026-02-27' };
    const held = {
      ...look,
      look: { ...look.look, sent: [chat], photos: [photoRead(chat.id)] },
      files: [{ photoId: chat.id, file: 'f'.repeat(64) }],
    };
    const asked: string[] = [];
    const openFile = async (name: string) => {
      asked.push(name);
      return null;
    };
    await act(() => render(<JudgedLook saved={{ ...one, looks: [held] }} at={0} openFile={openFile} />, room));
    const small = room.querySelector<HTMLElement>('.sent-photos [data-photo]');
    expect(small?.getAttribute('aria-label')).toBe('Open photo 1 at its own size');
    await act(async () => small?.click());
    expect(asked).toEqual(['f'.repeat(64)]);
    // The file is on another machine: that is said in its place.
    const opened = room.querySelector('.own-size');
    expect(opened?.textContent).toContain('Only the small picture is kept of this photo here.');
    await act(async () => opened?.querySelector<HTMLElement>('button')?.click());
    expect(room.querySelector('.own-size')).toBeNull();
    expect(document.activeElement).toBe(room.querySelector('.sent-photos [data-photo]'));
  });

  it('says nothing of then where the same is found now', async () => {
    await show(await saved([ondrasse], 'same'));
    expect(room.querySelector('.then-and-now')).toBeNull();
    expect(room.querySelector('.case')).not.toBeNull();
    // The first case of a process is built slowly on a busy machine.
  }, 30_000);

  it.each([
    [
      'en',
      'On 1 Mar 2026 something else was found than today',
      'Judged then by version 0.1.0. The maker file of Ondrasse has changed since.',
      ['What was found then', 'What is found now'],
    ],
    [
      'de',
      'Am 1. März 2026 wurde anderes gefunden als heute',
      'Damals von Fassung 0.1.0 beurteilt. Die Herstellerdatei von Ondrasse hat sich seither geändert.',
      ['Was damals gefunden wurde', 'Was heute gefunden wird'],
    ],
  ] as const)(
    'says in %s what was found then and what is found now, and by what',
    async (language, title, by, parts) => {
      chooseLanguage(language);
      await show(await saved([{ ...ondrasse, construction: [] }], 'changed'));
      const both = room.querySelector('.then-and-now');
      expect(both?.querySelector('summary')?.textContent).toBe(title);
      expect(both?.querySelector('p')?.textContent).toBe(by);
      expect([...(both?.querySelectorAll('h3') ?? [])].map((one) => one.textContent)).toEqual(parts);
      expect(both?.querySelectorAll('[data-check="construction-against-date"]').length).toBeGreaterThan(0);
    },
  );

  it('names a rule whose sentence cannot be made any more', async () => {
    const one = await saved([ondrasse], 'same');
    const [look] = one.looks;
    if (look?.state !== 'readable') throw new Error('not readable');
    look.look.judged.found.push({ check: 'price-changed', kind: 'doubt', data: {} });
    await show(one);
    expect(room.querySelector('.then-and-now [data-check="price-changed"]')?.textContent).toBe(
      'What is unusual: The price has fallen steeply since the last look',
    );
  });

  it('that is spoilt says so in its place', async () => {
    const problem = { code: 'record-damaged', where: 'watch list', what: 'this look is missing', remedy: 'None.' };
    const at = { readAt: now, judgedAt: now, corrections: [] };
    await show({ record: sampleRecord(), makers: [], looks: [{ state: 'damaged', problem, ...at }] });
    expect(room.querySelector('[data-look="damaged"]')?.textContent).toContain('look is missing');
  });
});
