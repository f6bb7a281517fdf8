import { createRequire } from 'node:module';

/** Neither imported nor awaited: it is a promise that is fulfilled with itself, for ever. */
export const cv = createRequire(import.meta.url)('@techstark/opencv-js') as typeof import('@techstark/opencv-js');

/** Until the library's own program is there. */
export async function startOpenCv(): Promise<void> {
  if (!cv.Mat) await new Promise<void>((ready) => Object.assign(cv, { onRuntimeInitialized: ready }));
}
