import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { compileFunction } from 'node:vm';
import { type HeifLibrary, type StartHeif, startedHeif } from '../photo';

const find = createRequire(import.meta.url);

/** libheif as the extension packs it, for one photo. */
export function openHeif(): Promise<HeifLibrary> {
  const script = find.resolve('libheif-js/libheif-wasm/libheif.js');
  return startedHeif(startOf(script), readFileSync(find.resolve('libheif-js/libheif-wasm/libheif.wasm')));
}

/** The script says on the console what it cannot read, and there the program's answers go: it is given another. */
function startOf(script: string): StartHeif {
  const names = ['module', 'require', 'console', '__filename', '__dirname'];
  const module: { exports?: StartHeif } = { exports: undefined };
  const run = compileFunction(`var exports = {}; ${readFileSync(script, 'utf8')}`, names, { filename: script });
  run(module, createRequire(script), { log() {}, warn() {}, error() {} }, script, dirname(script));
  if (module.exports === undefined) throw new Error(`${script} hands out nothing`);
  return module.exports;
}
