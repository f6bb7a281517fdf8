import type { KnownFault } from '../code';
import { strings } from './screens';

/** Why a row of known codes is not understood. */
export const sayKnownFault = (fault: KnownFault): string =>
  (strings.makers.learn.rows.faults[fault.kind] as (fault: KnownFault) => string)(fault);
