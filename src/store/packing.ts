import { fromBase64, toBase64 } from '../message/bytes';
import type { Packing } from '../watch';

/** By what the browser has itself: nothing is packaged for it. */
export const packing: Packing = {
  async digest(content) {
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>));
    return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
  },
  pack: async (text) => {
    const packed = new Response(through(text, new CompressionStream('deflate-raw')));
    return new Uint8Array(await packed.arrayBuffer());
  },
  async unpack(bytes) {
    const text = new TextDecoder('utf-8', { fatal: true });
    let unpacked = '';
    const stream = through(bytes as Uint8Array<ArrayBuffer>, new DecompressionStream('deflate-raw'));
    for await (const part of stream) {
      unpacked += text.decode(part, { stream: true });
      if (unpacked.length > mostCharacters) throw new Error('more than a look ever holds');
    }
    return unpacked + text.decode();
  },
  toBase64,
  fromBase64,
};

/** A few bytes from a strange file may unpack to more than any memory holds. */
const mostCharacters = 50_000_000;

const through = (content: string | Uint8Array<ArrayBuffer>, change: CompressionStream | DecompressionStream) =>
  (new Response(content).body as ReadableStream<Uint8Array<ArrayBuffer>>).pipeThrough(
    change as ReadableWritablePair<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>,
  );
