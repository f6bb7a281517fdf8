import type { OwnFields } from '../propose';
import { namesCarrier } from '../said/carrier';
import { usedOf } from '../said/period';
import { withoutPeriods } from '../said/used-text';
import { isOnPiece, opensPlaceOnPiece, readWhere, type SaidWhere } from '../said/where';
import { tellingFinder } from '../words';
import { modelBefore } from './models';

const onAny = tellingFinder('sits-on');

/** Where a sentence says that the code sits, since or until when, and in which model: "On the Fell 24 it is under the flap". */
export function carrierOf(
  sentence: string,
  ofCodes: boolean,
  makers: readonly string[],
): { own: Extract<OwnFields, { kind: 'carrier' }>; backwards: boolean } | null {
  const said = readWhere(sentence, ofCodes) ?? (ofCodes ? carrierInTime(sentence) : null);
  if (!said) return null;
  const { start, ...where } = said;
  const { periods } = withoutPeriods(sentence.slice(0, start));
  const told = periods.filter(({ form }) => form === 'since' || form === 'until');
  const { backwards, ...used } = usedOf(told.length === 1 ? told : []);
  // A lone name may be any noun of the sentence: a model's has its number.
  const model = modelBefore(sentence, start, makers);
  return {
    own: { kind: 'carrier', ...where, ...used, ...(model !== null && /\d/.test(model) && { model }) },
    backwards,
  };
}

const pieces = tellingFinder('on-sticker', 'on-card', 'on-chip', 'on-woven-label', 'on-tab');

/** "From 1996 on there was only a sticker in the main pocket": a time, what carries the code, and its place right behind. */
function carrierInTime(sentence: string): SaidWhere | null {
  const [period, ...more] = withoutPeriods(sentence).periods;
  if (!period || more.length > 0 || period.form === 'year' || period.start > farthestTime) return null;
  const named = pieces(sentence).find(({ start }) => start >= period.end);
  const where = named && sentence.slice(named.end + 1).replace(/[,.;:!?].{0,2000}$/su, '');
  if (!named || !where || !opensPlaceOnPiece(where) || onAny(where)[0]?.start !== 0 || !isOnPiece(where)) return null;
  const on = namesCarrier(sentence.slice(named.start, named.end));
  return { where, start: named.start, ...(on && { on }) };
}
const farthestTime = 3;
