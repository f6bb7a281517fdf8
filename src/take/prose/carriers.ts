import type { OwnFields } from '../propose';
import { usedOf } from '../said/period';
import { withoutPeriods } from '../said/used-text';
import { readWhere } from '../said/where';
import { modelBefore } from './models';

/** Where a sentence says that the code sits, since or until when, and in which model: "On the Fell 24 it is under the flap". */
export function carrierOf(
  sentence: string,
  ofCodes: boolean,
  makers: readonly string[],
): { own: Extract<OwnFields, { kind: 'carrier' }>; backwards: boolean } | null {
  const said = readWhere(sentence, ofCodes);
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
