import type { StampLine } from '../stamp/types';
import { withoutMarks } from './beside';
import { type DecodeOptions, decodeLattice, underFile } from './decode';
import { otherNumber } from './other-number';
import type { Decoding, LeftOpen, Nearest } from './types';

type Seen = Pick<StampLine, 'lattice' | 'mayGoOn' | 'otherWay'>;

/**
 * Reads a stamped line. What may go on outside the photo is never a whole code, whatever it spells; what spells a code
 * from both sides is settled by a maker's system that only one of them fits, or left open, and so is what may be another
 * number by the other texts of its photo (`beside`). Its readings then stand under `nearest`.
 */
export function decodeLine(line: Seen, options: DecodeOptions, beside: readonly string[] = []): Decoding {
  const upright = decodeLattice(line.lattice, options);
  const decoding = line.otherWay === undefined ? upright : settledSide(upright, line.otherWay, options);
  if (line.mayGoOn === true) return leftOpen(decoding, { kind: 'may-go-on' });
  const told = withoutMarks(decoding, options, (rest, file) => underFile(rest, file, options));
  const as = told.accepted && !fitsMaker(told) ? otherNumber(told.code, beside, options.now) : null;
  return as === null ? told : leftOpen(told, { kind: 'other-number', as });
}

function settledSide(upright: Decoding, otherWay: Seen['lattice'], options: DecodeOptions): Decoding {
  const turned = decodeLattice(otherWay, options);
  const [fits, fitsTurned] = [fitsMaker(upright), fitsMaker(turned)];
  if (fits !== fitsTurned) return fits ? upright : { ...turned, id: upright.id };
  return leftOpen(upright, { kind: 'upside-down', text: turned.readings[0]?.text ?? turned.code });
}

const fitsMaker = ({ readings }: Decoding): boolean => readings.some(({ system }) => system.maker !== null);

/** A decoding that does not count as read: its readings stand under `nearest`, with why. */
export function leftOpen(decoding: Decoding, why: LeftOpen): Decoding {
  const { readings, nearest, open = [] } = decoding;
  const seen = readings.map(
    (reading): Nearest => ({
      text: reading.text,
      system: reading.system,
      how: reading.text === decoding.code ? 'as-written' : 'likely',
      likelihood: reading.probability,
      reading,
    }),
  );
  return { ...decoding, accepted: false, readings: [], nearest: [...seen, ...nearest], open: [...open, why] };
}
