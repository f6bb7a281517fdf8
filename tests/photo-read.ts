import { type Came, observe, observed, observersOfPrint, type PhotoRead } from '../src/photo';
import type { StampLine } from '../src/stamp';
import { observedLine } from '../src/stamp/types';

/** What a photo showed, in short; whatever is left out was measured and says nothing. */
export interface Shown {
  width?: number;
  height?: number;
  lines?: readonly StampLine[];
  printed?: readonly string[];
  hash?: string;
  tooWeak?: boolean;
  background?: { lightness: number; spread: number; noise: number };
  came?: Came;
}

const grey = { width: 0, height: 0, data: new Float32Array() };

type Read = Extract<PhotoRead, { state: 'read' }>;

/** A photo's reading with these observations; what size and print tell is measured as the product measures it. */
export function photoRead(photoId: string, shown: Shown = {}): Read {
  const { width = 1200, height = 900, lines = [], printed = [], came, background } = shown;
  return {
    state: 'read',
    photoId,
    width,
    height,
    observations: [
      ...lines.map((line) => observedLine({ ...line, photoId })),
      ...printed.map((line, at) => ({ ...observed(photoId, 'print', line), id: `${photoId}-print-${at + 1}` })),
      observed(photoId, 'hash', shown.hash ?? photoId.padStart(16, '0').replace(/[^0-9a-f]/g, '0')),
      observed(photoId, 'too-weak', shown.tooWeak ?? false),
      ...Object.entries(background ?? {}).map(([name, value]) =>
        observed(photoId, `ground-${name}`, value, { unit: 'step' }),
      ),
      ...observe({ width, height, data: new Uint8ClampedArray() }, { photoId, grey, printed }, observersOfPrint),
    ],
    ...(came ? { came } : {}),
  };
}
