import { acceptanceLevel, type DecodeOptions, decodeLattice } from '../code';
import type { Reading } from '../code/types';
import { quadBounds } from '../photo';
import type { Problem } from '../problem';
import { readStamp, type StampEngines, type StampLine } from '../stamp';
import type { PhotoFile } from './photo-file';

/** One way to read a photo's stamp; `box` is left, top, right, bottom in the file's own upright pixels. */
export interface StampReading {
  text: string;
  probability: number;
  system: Reading['system'] | null;
  span: Reading['span'];
  place: string | null;
  box: [number, number, number, number];
}

/** What the command says of one file; `readings` is empty when nothing reaches the acceptance level. */
export interface StampResult {
  file: string;
  readings: StampReading[];
  printed: string[];
  candidates?: StampReading[];
  nearest?: { text: string; change: string; box: StampReading['box'] }[];
  problem?: Problem;
}

/** A line that is likelier something else than a code stamp never counts as read. */
const leastStampScore = 0.5;
const mostCandidates = 8;

export async function photoResult(
  file: string,
  photo: PhotoFile,
  engines: StampEngines,
  options: Pick<DecodeOptions, 'makers' | 'maker' | 'now'>,
): Promise<StampResult> {
  const read = await readStamp(photo.image, file, engines);
  if (read.state === 'unread') return { file, readings: [], printed: [], problem: read.problem };
  const accepted: StampReading[] = [];
  const candidates: StampReading[] = [];
  const nearest: NonNullable<StampResult['nearest']> = [];
  for (const line of read.lines) {
    const box = boxOf(line, photo.scale);
    const decoding = decodeLattice(line.lattice, options);
    const ways = decoding.readings.map((reading) => reported(reading, box));
    const free = {
      text: line.free.text,
      probability: line.free.probability,
      system: null,
      span: null,
      place: null,
      box,
    };
    const isStamp = line.stampScore >= leastStampScore;
    const sure = ways.reduce((sum, way) => sum + way.probability, 0) >= acceptanceLevel;
    if (isStamp && sure) accepted.push(...ways);
    else if (isStamp && ways.length === 0 && free.probability >= acceptanceLevel) accepted.push(free);
    else candidates.push(...(ways.length > 0 ? ways : [free]));
    for (const { text, change } of decoding.nearest) nearest.push({ text, change, box });
  }
  const best = (list: StampReading[]): StampReading[] => list.sort((a, b) => b.probability - a.probability);
  const result: StampResult = { file, readings: best(accepted), printed: read.printed };
  if (candidates.length > 0) result.candidates = best(candidates).slice(0, mostCandidates);
  if (nearest.length > 0 && accepted.every(({ system }) => system === null)) result.nearest = nearest.slice(0, 5);
  return result;
}

const reported = (reading: Reading, box: StampReading['box']): StampReading => ({
  text: reading.text,
  probability: round(reading.probability),
  system: reading.system,
  span: reading.span,
  place: reading.places[0] ?? null,
  box,
});

const round = (share: number): number => Math.round(share * 1e4) / 1e4;

function boxOf(line: StampLine, scale: number): StampReading['box'] {
  const { x0, y0, x1, y1 } = quadBounds(line.quad);
  return [x0, y0, x1, y1].map((side) => Math.round(side * scale)) as StampReading['box'];
}
