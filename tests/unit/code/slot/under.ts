import { decodeSystem, readsOf } from '../../../../src/code';
import { isFault, layOut } from '../../../../src/code/layout';
import type { CodeSystem, Layout, Period, Plant } from '../../../../src/maker/types';
import { sayFault } from '../../../../src/words';

/** What a code reads under one layout, each reading in short form; empty when it does not fit. */
export function readUnder(
  layout: Layout,
  used: Period,
  code: string,
  plants: Plant[] = [],
  reversed = false,
): string[] {
  const system: CodeSystem = { id: 'tried', used, layout, reversed, examples: [] };
  return decodeSystem(code, system, plants).map(readsOf);
}

/** What is wrong with a layout; null when nothing is. */
export function faultOf(layout: Layout): string | null {
  const laid = layOut(layout, { plantCodes: [] });
  return isFault(laid) ? sayFault(laid.fault, undefined, 'en') : null;
}
