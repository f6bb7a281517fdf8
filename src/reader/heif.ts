import { type HeifLibrary, type StartHeif, startedHeif } from '../photo';

const packaged = (name: string): string => new URL(`/heif/${name}`, location.href).href;

/** libheif as it is packed, for one photo. Nothing of it is loaded before a HEIC file comes. */
export async function openHeif(): Promise<HeifLibrary> {
  const script: { default: StartHeif } = await import(/* @vite-ignore */ packaged('libheif.mjs'));
  const wasm = await (await fetch(packaged('libheif.wasm'))).arrayBuffer();
  return startedHeif(script.default, wasm);
}
