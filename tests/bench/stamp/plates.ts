import { existsSync, readFileSync } from 'node:fs';
import { openPhotoFile } from '../../../src/cli/photo-file';
import { cropPixels, greyOf, type PixelImage, type Quad } from '../../../src/photo';
import { freeTexts, type StampEngines } from '../../../src/stamp';
import { bare, share } from './judge';

interface PlateCase {
  file: string;
  text: string;
  country: string;
  /** Left, top, right and bottom, whole pixels inside the photo. */
  box: [number, number, number, number];
}

/** One way to read a plate: every text it finds, in the plate's own picture. */
export interface PlateReader {
  name: string;
  read(plate: PixelImage, country: string): Promise<string[]>;
}

/** Three letters, four digits: what a Brazilian plate's likeliest text is under its layout. */
const brazilian = /^[A-Z]{3}[0-9]{4}$/;

export function plateReaders(engines: StampEngines): PlateReader[] {
  const readers: PlateReader[] = [];
  const { print, net } = engines;
  if (print !== null) {
    readers.push(
      {
        name: 'tesseract.js, crop as a page',
        read: async (plate) => (await print.read(plate, 'page')).map(({ text }) => text),
      },
      {
        name: 'tesseract.js, crop as one line',
        read: async (plate) => (await print.read(plate, 'line')).map(({ text }) => text),
      },
    );
  }
  if (net !== undefined) {
    const lattices = async (plate: PixelImage) => {
      const grey = greyOf(plate);
      const found = await net.findLines(grey);
      const quads: Quad[] = found.length > 0 ? found.slice(0, 4).map(({ quad }) => quad) : [wholeQuad(plate)];
      return Promise.all(quads.map((quad) => net.readLine(grey, quad)));
    };
    readers.push(
      {
        name: 'our nets, free',
        read: async (plate) => (await lattices(plate)).map((lattice) => freeTexts(lattice)[0]?.text ?? ''),
      },
      {
        name: 'our nets, layout known (BR)',
        read: async (plate, country) =>
          (await lattices(plate)).map((lattice) => {
            const texts = freeTexts(lattice, 80, 80);
            const fitting = country === 'br' ? texts.find(({ text }) => brazilian.test(bare(text))) : undefined;
            return (fitting ?? texts[0])?.text ?? '';
          }),
      },
    );
  }
  return readers;
}

const wholeQuad = ({ width, height }: PixelImage): Quad => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

/** The real plates that no one here rendered; null when they are not beside the repository. */
export async function plateTable(readers: readonly PlateReader[]): Promise<Record<string, string>[] | null> {
  const folder = new URL('../../../../shared/fixtures/plates/', import.meta.url);
  if (!existsSync(new URL('truth.json', folder))) return null;
  const { cases } = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as { cases: PlateCase[] };
  const rows: Record<string, string>[] = [];
  for (const reader of readers) {
    const exact: Record<string, number> = {};
    const all: Record<string, number> = {};
    let spent = 0;
    for (const plate of cases) {
      const opened = await openPhotoFile(new URL(plate.file, folder).pathname);
      if (!opened.ok) throw new Error(`${plate.file}: ${opened.problem.code}`);
      const [left, top, right, bottom] = plate.box;
      const inside = cropPixels(opened.value.image, left, top, right - left, bottom - top);
      const start = performance.now();
      const texts = await reader.read(inside, plate.country);
      spent += performance.now() - start;
      all[plate.country] = (all[plate.country] ?? 0) + 1;
      if (texts.some((text) => bare(text) === bare(plate.text))) exact[plate.country] = (exact[plate.country] ?? 0) + 1;
    }
    const countries = Object.keys(all).sort();
    const total = countries.reduce((sum, country) => sum + (exact[country] ?? 0), 0);
    rows.push({
      reader: reader.name,
      ...Object.fromEntries(countries.map((c) => [`${c.toUpperCase()} exact`, `${exact[c] ?? 0} of ${all[c]}`])),
      all: `${total} of ${cases.length} (${share(total, cases.length)})`,
      'ms a plate': (spent / cases.length).toFixed(0),
    });
  }
  return rows;
}
