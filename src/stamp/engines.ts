import type { GreyImage, PixelImage, Quad } from '../photo/types';
import type { Lattice } from './types';

/** A rectangle in pixels of the image that was read. */
export interface Box {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** One printed character: what it may be, most likely first; shares are 0 to 1 and sum to at most 1. */
export interface PrintSymbol {
  choices: { text: string; share: number }[];
  box: Box;
}

/** One printed word; `confidence` (0 to 1) is the engine's own for the whole word, which is what can be trusted. */
export interface PrintWord {
  text: string;
  confidence: number;
  symbols: PrintSymbol[];
}

export interface PrintLine {
  text: string;
  confidence: number;
  box: Box;
  words: PrintWord[];
}

/** Printed text by a general engine. 'page' finds the lines itself, 'line' takes the image as one line. */
export interface PrintReader {
  /** Of a reader that starts at its first use: starts it, and says whether it could. Absent where it already runs. */
  starts?(): Promise<boolean>;
  read(image: PixelImage, layout: 'page' | 'line'): Promise<PrintLine[]>;
}

/** A line that the finder proposes, in pixels of the photo, and how likely it is a code stamp (0 to 1). */
export interface FoundLine {
  quad: Quad;
  stampScore: number;
}

/**
 * The stamp nets. `findLines` looks at the photo in a small size of its own, in a share of it (0 to 1), or so many times
 * enlarged as far as its own size allows, and answers in the photo's pixels, best first; `readLine` rectifies the quad at
 * full size and gives calibrated probabilities (temperature applied).
 */
export interface StampNets {
  findLines(photo: GreyImage, share?: number): Promise<FoundLine[]>;
  readLine(photo: GreyImage, quad: Quad): Promise<Lattice>;
  /** Ground that a lattice covers past each end of its quad, in heights of the quad. */
  margin: number;
  /** From the model card: below these a text, or a line, does not count as read. */
  acceptance: { stampScore: number };
}

/** What reading needs from outside; `print` is null where there is no general engine, or it could not start. */
export interface StampEngines {
  print: PrintReader | null;
  net?: StampNets;
}
