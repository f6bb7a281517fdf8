import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';

/** Bytes of the page script as built, and gzipped. */
export async function contentScriptSize(): Promise<{ bytes: number; gzipped: number; modules: string[] }> {
  const entry = fileURLToPath(new URL('../../entrypoints/listing.content.ts', import.meta.url));
  const result = await build({
    configFile: false,
    logLevel: 'error',
    define: { 'import.meta.env': '{}' },
    build: { write: false, minify: true, lib: { entry, formats: ['iife'], name: 'listing' } },
  });
  const [output] = Array.isArray(result) ? result : [result];
  if (!output || !('output' in output)) throw new Error('The page script was not built.');
  const [chunk] = output.output;
  const code = Buffer.from(chunk.code);
  return { bytes: code.length, gzipped: gzipSync(code, { level: 9 }).length, modules: Object.keys(chunk.modules) };
}
