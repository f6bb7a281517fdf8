import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { startPrint } from '../src/reader/print-core';

/** Runs in the print engine's worker, where WASM has SIMD. */
export default defineUnlistedScript(() => startPrint(globalThis as unknown as Parameters<typeof startPrint>[0], true));
