import { expect, it } from 'vitest';
import { contentScriptSize } from '../../listing-pages/content-script';

/** Every page that the buyer reads loads this script: it stays small, and what validates stays outside. */
it('keeps the page script under 46 kB gzipped, without the validation library', async () => {
  const { gzipped, modules } = await contentScriptSize();
  expect(gzipped).toBeGreaterThan(10_000);
  expect(gzipped).toBeLessThanOrEqual(46 * 1024);
  expect(modules.filter((name) => name.includes('node_modules/zod'))).toEqual([]);
}, 60_000);
