import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const fakes = vi.hoisted(() => ({
  incognito: false,
  granted: true,
  sendToPage: vi.fn(),
  requestPhoto: vi.fn(),
  capturePhoto: vi.fn(),
}));
vi.mock('../../../../src/browser/api', () => ({
  browser: {
    tabs: { get: async () => ({ incognito: fakes.incognito }) },
    permissions: { contains: async () => fakes.granted },
  },
}));
vi.mock('../../../../src/store/page-record', () => ({
  readPageRecord: async () => ({
    url: 'https://attic-arcade.example/item/7',
    windowId: 1,
    photos: [
      { id: 'photo-1', urls: ['https://photos.attic-arcade.example/1.jpg'] },
      { id: 'photo-2', urls: ['http://127.0.0.1/2.jpg', 'http://printer.local/2.jpg'] },
    ],
  }),
}));
vi.mock('../../../../src/message/send', () => ({ sendToPage: fakes.sendToPage }));
vi.mock('../../../../src/reader/page/read-page', () => ({ injectPageScript: async () => ({ ok: true, value: null }) }));
vi.mock('../../../../src/reader/photo/request-photo', () => ({ requestPhoto: fakes.requestPhoto }));
vi.mock('../../../../src/reader/photo/capture-photo', () => ({ capturePhoto: fakes.capturePhoto }));

import { fetchPhoto } from '../../../../src/reader/photo/fetch-photo';

const failing = (code: string) => ({ ok: false, problem: { code, where: 'page', what: code, remedy: '' } });
const photo = new Blob(['bytes'], { type: 'image/jpeg' });

beforeEach(() => {
  vi.useFakeTimers();
  fakes.incognito = false;
  fakes.sendToPage.mockReset().mockResolvedValue(failing('photo-unreachable'));
  fakes.requestPhoto.mockReset().mockResolvedValue({ ok: true, value: photo });
  fakes.capturePhoto.mockReset().mockResolvedValue(failing('photo-not-shown'));
});
afterEach(() => {
  vi.useRealTimers();
});

describe('the ways to a photo', () => {
  it('share one deadline: what the page took is taken from the extension’s own request', async () => {
    fakes.sendToPage.mockImplementation(
      () => new Promise((answer) => setTimeout(answer, 15_000, failing('photo-unreachable'))),
    );
    const fetched = fetchPhoto(1, 'photo-1');
    await vi.advanceTimersByTimeAsync(15_000);
    expect(await fetched).toMatchObject({ ok: true, value: { mediaType: 'image/jpeg', came: { way: 'background' } } });
    expect(fakes.requestPhoto.mock.calls).toEqual([
      [
        'https://photos.attic-arcade.example/1.jpg',
        { credentials: 'omit', referrerPolicy: 'no-referrer', withinMs: 5_000 },
      ],
    ]);
  });

  it('end with the picture of the tab when a page stands still', async () => {
    fakes.sendToPage.mockImplementation(() => new Promise(() => {}));
    const fetched = fetchPhoto(1, 'photo-1');
    await vi.advanceTimersByTimeAsync(20_000);
    expect(await fetched).toMatchObject({ ok: false, problem: { code: 'photo-late', where: 'photo photo-1' } });
    expect(fakes.requestPhoto).not.toHaveBeenCalled();
    expect(fakes.capturePhoto).toHaveBeenCalledOnce();
  });

  it('from a private window are the page’s request and the picture of the tab alone', async () => {
    fakes.incognito = true;
    expect(await fetchPhoto(1, 'photo-1')).toMatchObject({ ok: false, problem: { code: 'photo-unreachable' } });
    expect(fakes.requestPhoto).not.toHaveBeenCalled();
    expect(fakes.capturePhoto).toHaveBeenCalledOnce();
  });

  it('make no request for an address that leads on, or is inside the user’s network', async () => {
    fakes.sendToPage.mockResolvedValue(failing('photo-redirected'));
    expect(await fetchPhoto(1, 'photo-1')).toMatchObject({ ok: false, problem: { code: 'photo-redirected' } });
    expect(fakes.requestPhoto).not.toHaveBeenCalled();
    fakes.sendToPage.mockClear();
    expect(await fetchPhoto(1, 'photo-2')).toMatchObject({ ok: false, problem: { code: 'address-refused' } });
    expect(fakes.sendToPage).not.toHaveBeenCalled();
  });
});
