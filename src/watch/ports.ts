import type { MakerFile } from '../maker/types';
import type { Mark } from './loss';

/** What is done with bytes, which only the place that the program runs in can do. */
export interface Packing {
  /** SHA-256 in hex; of a text, of its bytes in UTF-8. */
  digest(content: string | Uint8Array): Promise<string>;
  /** A text, deflated. */
  pack(text: string): Promise<Uint8Array>;
  /** The text again; throws for bytes that are none, or cut off. */
  unpack(bytes: Uint8Array): Promise<string>;
  toBase64(bytes: Uint8Array): string;
  fromBase64(base64: string): Uint8Array;
}

export interface WatchPorts {
  /**
   * Changes the mark that stands outside the database, from what was stored to what is returned. Changes run one after
   * the other, whichever window asks for them.
   */
  changeMark(change: (stored: unknown) => Promise<Mark>): Promise<Mark>;
  /** ISO date and time. */
  now(): string;
  newId(): string;
  packing: Packing;
  /** Version of the program, by which a look says who judged it. */
  rules: string;
  /** The maker files of today for a listing's address. */
  makers(url: string): Promise<readonly MakerFile[]>;
}
