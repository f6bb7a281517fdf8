import { type DecodeOptions, decodeLine } from '../code';
import type { Reading } from '../code/types';
import { type OpenedPhoto, quadBounds } from '../photo';
import type { Problem } from '../problem';
import { looksLikeCode, readStamp, type StampEngines, type StampLine, textsBeside } from '../stamp';
import { changeWords } from './change-words';

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

/** A line that is likelier something else than a code stamp never counts as read; the nets bring their own level. */
const leastStampScore = 0.5;
const mostCandidates = 8;

export async function photoResult(
  file: string,
  photo: OpenedPhoto,
  engines: StampEngines,
  options: Pick<DecodeOptions, 'makers' | 'maker' | 'now'>,
): Promise<StampResult> {
  const read = await readStamp(photo.image, file, engines, undefined, photo);
  if (read.state === 'unread') return { file, readings: [], printed: [], problem: read.problem };
  const accepted: StampReading[] = [];
  const candidates: StampReading[] = [];
  const nearest: NonNullable<StampResult['nearest']> = [];
  const least = engines.net?.acceptance.stampScore ?? leastStampScore;
  for (const line of read.lines) {
    const box = boxOf(line, photo.scale);
    const decoding = decodeLine(line, options, textsBeside(line, read.lines, read.printed));
    const { text, probability } = line.free;
    const free: StampReading = { text, probability: round(probability), system: null, span: null, place: null, box };
    if (line.stampScore < least) candidates.push(free);
    else if (decoding.readings.length > 0) accepted.push(...decoding.readings.map((reading) => reported(reading, box)));
    else if (decoding.accepted && looksLikeCode(text)) accepted.push(free);
    else {
      const ways = decoding.nearest.filter(({ how }) => how !== 'differs');
      candidates.push(free, ...ways.map(({ reading }) => reported(reading, box)));
    }
    if (decoding.readings.length === 0) {
      for (const near of decoding.nearest)
        nearest.push({ text: near.text, change: changeWords(decoding.code, near), box });
    }
  }
  const best = (list: StampReading[]): StampReading[] =>
    list.sort((a, b) => Number(b.system !== null) - Number(a.system !== null) || b.probability - a.probability);
  const result: StampResult = { file, readings: best(accepted), printed: read.printed };
  if (candidates.length > 0) result.candidates = best(candidates).filter(isFirst).slice(0, mostCandidates);
  if (nearest.length > 0) result.nearest = nearest.slice(0, 5);
  return result;
}

/** Whether nothing before it in the list is the same text of the same place under the same system. */
const isFirst = (way: StampReading, at: number, all: readonly StampReading[]): boolean => {
  const key = ({ text, system, span, box }: StampReading): string => JSON.stringify([text, system, span, box]);
  return all.findIndex((other) => key(other) === key(way)) === at;
};

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
