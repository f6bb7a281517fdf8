import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { startWithoutSimd } from '../src/reader/print-without-simd';

/** Runs in the print engine's worker, where WASM has no SIMD. */
export default defineUnlistedScript(() =>
  startWithoutSimd(globalThis as unknown as Parameters<typeof startWithoutSimd>[0]),
);
