import { readFileSync } from 'node:fs';
import * as z from 'zod';
import { openPhotoFile } from '../../src/cli/photo-file';
import { acceptanceLevel } from '../../src/code';
import { looksLikeCode, readStamp, type StampEngines, type StampNets, type StampReading } from '../../src/stamp';

/** Folder of the committed photographs; `expected.json` says what each shows, `readings.json` what the product reads. */
export const stampPhotos = new URL('./stamps/', import.meta.url);

export const classes = ['clear', 'fair', 'hard', 'none'] as const;
export type PhotoClass = (typeof classes)[number];

const shownSchema = z.array(
  z.looseObject({ file: z.string(), difficulty: z.string(), code: z.string().nullable() }).transform((photo) => ({
    file: photo.file,
    code: photo.code,
    /** Photographs without a code are a class of their own, however clear they are. */
    class: z.enum(classes).parse(photo.code === null ? 'none' : photo.difficulty),
  })),
);
export const shownInPhotos = () =>
  shownSchema.parse(JSON.parse(readFileSync(new URL('expected.json', stampPhotos), 'utf8')));

/**
 * What a user is told of one photograph: the lines in order with their texts, whether each text is sure and each line
 * a stamp, and the print. Probabilities and places are left out: two JPEG decoders differ by a grey level, which moves
 * their last digits.
 */
export const toldSchema = z.union([
  z.strictObject({
    lines: z.array(z.strictObject({ text: z.string(), sure: z.boolean(), stamp: z.boolean() })),
    printed: z.array(z.string()),
  }),
  z.strictObject({ problem: z.string() }),
]);
export type Told = z.infer<typeof toldSchema>;

export const readingsSchema = z.record(z.string(), toldSchema);
const readingsFile = new URL('readings.json', stampPhotos);
export const keptReadings = (): Record<string, Told> =>
  readingsSchema.parse(JSON.parse(readFileSync(readingsFile, 'utf8')));

export function toldOf(read: StampReading, { stampScore }: StampNets['acceptance']): Told {
  if (read.state === 'unread') return { problem: read.problem.code };
  return {
    lines: read.lines.map((line) => ({
      text: line.free.text,
      sure: line.free.probability >= acceptanceLevel,
      stamp: line.stampScore >= stampScore,
    })),
    printed: read.printed,
  };
}

export async function readPhotoFile(file: string, engines: StampEngines): Promise<StampReading> {
  const photo = await openPhotoFile(new URL(file, stampPhotos).pathname);
  if (!photo.ok) return { state: 'unread', photoId: file, problem: photo.problem };
  return readStamp(photo.value.image, file, engines);
}

/** Separators that a stamp may or may not show make no other code. */
export const bare = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '');

/** Texts that are told as the code of a stamp, and are sure. */
export const sureCodes = (told: Told): string[] =>
  'problem' in told
    ? []
    : told.lines.filter(({ text, sure, stamp }) => stamp && sure && looksLikeCode(text)).map(({ text }) => bare(text));

/** Texts of lines taken for a stamp, sure or not. */
export const stampTexts = (told: Told): string[] =>
  'problem' in told ? [] : told.lines.filter(({ stamp }) => stamp).map(({ text }) => bare(text));
