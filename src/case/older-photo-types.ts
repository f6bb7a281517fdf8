import { observe, observed, observersOfPrint } from '../photo';
import { stampLineKind } from '../stamp/types';

/**
 * A photo's reading as cases kept it before observations: its fields become observations of the same content. What is
 * told by size and print alone is measured anew from those. Anything else is left as it is, for the schema to judge.
 */
export function liftPhotoRead(read: unknown): unknown {
  if (!isFields(read) || read.state !== 'read' || 'observations' in read || !isOlder(read)) return read;
  const { lines, printed, hash, tooWeak, background, ...rest } = read;
  const { photoId, width, height } = rest;
  const ground = isFields(background) ? background : {};
  return {
    ...rest,
    observations: [
      ...lines.map((line) => liftLine(line, photoId)),
      ...printed.map((line, at) => observed(photoId, 'print', line, {}, at + 1)),
      observed(photoId, 'hash', hash),
      observed(photoId, 'too-weak', tooWeak),
      ...['lightness', 'spread', 'noise'].flatMap((name) => {
        const value = ground[name];
        return typeof value === 'number' ? [observed(photoId, `ground-${name}`, value, { unit: 'step' })] : [];
      }),
      ...observe(
        { width, height, data: none },
        { photoId, grey: { width, height, data: noGrey }, printed },
        observersOfPrint,
      ),
    ],
  };
}

type Fields = Record<string, unknown>;
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

interface OlderRead extends Fields {
  photoId: string;
  width: number;
  height: number;
  lines: unknown[];
  printed: string[];
  hash: string;
  tooWeak: boolean;
}
const isOlder = (read: Fields): read is OlderRead =>
  typeof read.photoId === 'string' &&
  typeof read.width === 'number' &&
  typeof read.height === 'number' &&
  Array.isArray(read.lines) &&
  Array.isArray(read.printed) &&
  read.printed.every((line) => typeof line === 'string') &&
  typeof read.hash === 'string' &&
  typeof read.tooWeak === 'boolean';

function liftLine(line: unknown, photoId: string): unknown {
  if (!isFields(line) || !isFields(line.free)) return line;
  const { id, photoId: _, quad, free, ...detail } = line;
  return {
    ...observed(photoId, stampLineKind, String(free.text)),
    id,
    where: { form: 'quad', points: quad },
    detail: { ...detail, probability: free.probability },
  };
}

const none = new Uint8ClampedArray();
const noGrey = new Float32Array();
