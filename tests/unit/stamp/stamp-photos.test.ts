import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as z from 'zod';
import { type OpenEngines, openEngines } from '../../../src/cli/engines';
import {
  bare,
  classes,
  keptReadings,
  readPhotoFile,
  shownInPhotos,
  stampPhotos,
  stampTexts,
  sureCodes,
  type Told,
  toldOf,
} from '../../photos/stamp-readings';

/** What must be reached: written beside the photographs, because it changes with them and with the nets. */
const limits = z
  .strictObject({
    leastExact: z.record(z.enum(classes), z.number().int()),
    leastSure: z.record(z.enum(classes), z.number().int()),
    mostWrongButSure: z.number().int(),
    why: z.string(),
  })
  .parse(JSON.parse(readFileSync(new URL('limits.json', stampPhotos), 'utf8')));

const shown = shownInPhotos();
const files = shown.map(({ file }) => file);

describe('the committed photographs of stamps', () => {
  let open: OpenEngines;
  let read: Record<string, Told>;
  beforeAll(async () => {
    open = await openEngines();
    read = {};
    for (const file of files)
      read[file] = toldOf(await readPhotoFile(file, open.engines), open.engines.net!.acceptance);
  }, 900_000);
  afterAll(() => open?.close());

  it('are 60, and each has its kept reading', () => {
    const photos = readdirSync(stampPhotos).filter((name) => name.endsWith('.jpg'));
    expect(files.toSorted()).toEqual(photos.toSorted());
    expect(Object.keys(keptReadings()).toSorted()).toEqual(files.toSorted());
    expect(files).toHaveLength(60);
  });

  it('are read as kept beside them (npm run make:stamp-readings writes that anew; look at the difference)', () => {
    expect(read).toEqual(keptReadings());
  });

  it.each(classes)('%s: as many codes are read exactly as were when the limits were written', (name) => {
    const ofClass = shown.filter((photo) => photo.class === name && photo.code !== null);
    const exact = ofClass.filter(({ file, code }) => stampTexts(read[file]!).includes(bare(code!)));
    const sure = ofClass.filter(({ file, code }) => sureCodes(read[file]!).includes(bare(code!)));
    expect(exact.length).toBeGreaterThanOrEqual(limits.leastExact[name]!);
    expect(sure.length).toBeGreaterThanOrEqual(limits.leastSure[name]!);
  });

  it('a code that is told as sure is the one that is stamped', () => {
    const wrong = shown
      .map(({ file, code }) => ({
        file,
        code,
        told: sureCodes(read[file]!).filter((text) => text !== bare(code ?? '')),
      }))
      .filter(({ told }) => told.length > 0);
    expect(wrong.length, JSON.stringify(wrong)).toBeLessThanOrEqual(limits.mostWrongButSure);
  });
});
