import sharp from 'sharp';
import { startMarket } from '../market/server';
import { type Browser, type LaunchOptions, launch } from './launch';
import type { SidePanel } from './toolbar';

/** Colours of a test photo's corners: top left, top right, bottom right, bottom left. */
export const corners = ['#b03020', '#20a040', '#2040b0', '#c0a020'] as const;

/** A photo of four fields that differ, so that one that is cut, shifted, turned or covered is not taken for whole. */
export async function fourFields(width: number, height: number): Promise<Uint8Array> {
  const [w, h] = [width / 2, height / 2];
  const places = [`x="0" y="0"`, `x="${w}" y="0"`, `x="${w}" y="${h}"`, `x="0" y="${h}"`];
  const fields = corners.map((colour, at) => `<rect ${places[at]} width="${w}" height="${h}" fill="${colour}"/>`);
  const drawn = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${fields.join('')}</svg>`;
  return sharp(Buffer.from(drawn)).png().toBuffer();
}

export interface FarShop {
  browser: Browser;
  /** Serves a listing's page whose photos lie on the other host; returns its address. */
  page(name: string, parts: FarPage): string;
  /** Serves a photo on the other host; returns its address. */
  photo(name: string, bytes: Uint8Array): string;
  close(): Promise<void>;
}

interface FarPage {
  /** Addresses of the listing's photos as its data name them. */
  photos: string[];
  body: string;
  css?: string;
  script?: string;
}

/** A shop and the host of its photos, which lets no script of the shop fetch them, in a window of the usual size. */
export async function openFarShop(options: LaunchOptions = {}): Promise<FarShop> {
  const [shop, photos] = await Promise.all([startMarket(), startMarket()]);
  const rules = [
    `MAP attic-arcade.example ${new URL(shop.url).host}`,
    `MAP photos.attic-arcade.example ${new URL(photos.url).host}`,
  ];
  const browser = await launch({
    window: { width: 1100, height: 800 },
    ...options,
    flags: [`--host-resolver-rules=${rules.join(',')}`, ...(options.flags ?? [])],
  });
  return {
    browser,
    photo(name, bytes) {
      photos.make(name, { type: 'image/png', body: bytes });
      return `http://photos.attic-arcade.example/${name}`;
    },
    page(name, { photos: named, body, css = '', script = '' }) {
      const data = {
        '@context': 'https://schema.org',
        '@type': 'Product',
        name: 'Tessaro Vell Carryall',
        brand: 'Tessaro Vell',
        image: named,
        offers: { '@type': 'Offer', price: '540', priceCurrency: 'EUR' },
      };
      shop.make(name, {
        type: 'text/html; charset=utf-8',
        body: `<!doctype html><html lang="en"><head><title>Carryall</title><style>${css}</style>
          <script type="application/ld+json">${JSON.stringify(data)}</script></head>
          <body><main><h1>Tessaro Vell Carryall</h1><p>€540</p>${body}</main><script>${script}</script></body></html>`,
      });
      return `http://attic-arcade.example/${name}`;
    },
    close: async () => {
      await browser.close();
      await Promise.all([shop.close(), photos.close()]);
    },
  };
}

/**
 * The corners of each photo that the panel shows, as the nearest of the colours above, or as it is where none is near;
 * null where no picture is shown.
 */
export async function cornersShown(panel: SidePanel): Promise<(string[] | null)[]> {
  const seen = await panel.evaluate<(number[][] | null)[]>(`Promise.all(
    [...document.querySelectorAll('.photo-strip li')].map(async (item) => {
      const photo = item.querySelector('img');
      if (!photo) return null;
      await photo.decode();
      const { naturalWidth: width, naturalHeight: height } = photo;
      const pen = new OffscreenCanvas(width, height).getContext('2d');
      pen.drawImage(photo, 0, 0);
      return [[2, 2], [width - 3, 2], [width - 3, height - 3], [2, height - 3]].map(([x, y]) =>
        [...pen.getImageData(x, y, 1, 1).data].slice(0, 3));
    }))`);
  return seen.map((four) => four?.map(nearestCorner) ?? null);
}

/** Which of the colours above a colour is, or how it is written where none is near. */
export function nearestCorner(colour: number[]): string {
  const channels = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const near = corners.find((one) => channels(one).every((channel, at) => Math.abs(channel - (colour[at] ?? 0)) < 24));
  return near ?? `rgb(${colour.join(' ')})`;
}

export const progressLine = (panel: SidePanel): Promise<string> =>
  panel.evaluate(`document.querySelector('.progress-line').textContent`);
