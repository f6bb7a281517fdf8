import { decodeText } from '../../code';
import type { Misfit, Nearest } from '../../code/types';
import { inUseAt, isInOwnTime } from '../../evidence';
import type { MakerFile } from '../../maker/types';
import { periodSpan, type Span } from '../../span';
import { defineFact } from './define';
import { type SettledCode, settledCodes } from './settled-codes';

/** What of a code cannot be at its date, and the codes nearest to it. */
interface InTime {
  misfit: Misfit;
  nearest: Nearest[];
}

/** The settled codes that are impossible at their own date, by the decoding's id. */
export const misfitsInTime = defineFact<ReadonlyMap<string, InTime>>(({ maker }, ask) => {
  const settled = ask(settledCodes);
  if (!('is' in settled)) return settled;
  const found = settled.is.flatMap((code) => {
    const misfit = maker && misfitInTime(code, maker);
    return misfit ? [[code.decoding.id, misfit] as const] : [];
  });
  return { is: new Map(found) };
});

/**
 * A code may read only under a system that was not in use at the date it then gives, and have at that date the shape
 * of the system that was, with an impossible value: the fifteenth month of 1993, or the fifteenth week fourteen years
 * before weeks were stamped. The impossible value is then what is wrong with it. Null for every other code.
 */
function misfitInTime(code: SettledCode, maker: MakerFile): InTime | null {
  const spans = code.readings.flatMap(({ span }) => (span ? [span] : []));
  if (spans.length === 0 || code.readings.some(isInOwnTime)) return null;
  const codeSystems = maker.codeSystems.filter((system) => inUse(system, spans));
  if (codeSystems.length === 0) return null;
  const file: MakerFile = { ...maker, codeSystems };
  const text = code.readings[0]?.text ?? code.decoding.code;
  const decoding = decodeText(text, { makers: [file], maker: maker.maker });
  const misfit = decoding.readings.length === 0 ? decoding.misfits[0] : undefined;
  return misfit ? { misfit, nearest: decoding.nearest } : null;
}

function inUse(system: MakerFile['codeSystems'][number], spans: Span[]): boolean {
  const used = periodSpan(system.used);
  return used !== null && inUseAt(used, spans);
}
