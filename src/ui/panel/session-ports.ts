import type { Case } from '../../case';
import type { PreviousLook } from '../../check/types';
import type { MakerFile } from '../../maker/types';
import type { OutputOf, PhotoBytes } from '../../message/protocol';
import type { PhotoRead } from '../../photo/read-types';
import type { Result } from '../../problem';
import type { Reader } from '../../reader';
import type { Clock } from './read-photos';
import type { PanelState, TypedCode } from './state';

/** The session's ways to everything outside of it. */
export interface SessionPorts {
  readPage(tabId: number): Promise<Result<OutputOf<'page.read'>>>;
  fetchPhoto(tabId: number, photoId: string): Promise<Result<PhotoBytes>>;
  reader: Reader;
  /** The user's own maker files. */
  makers(): Promise<MakerFile[]>;
  buildCase(facts: {
    listing: NonNullable<PanelState['listing']>;
    photos: PhotoRead[];
    typedCodes: TypedCode[];
    makers: MakerFile[];
    now: string;
    previous?: PreviousLook | undefined;
  }): Case;
  /** The saved look at a listing before this one; null when there is none, or nothing may be stored. */
  previousLook(url: string, incognito: boolean): Promise<PreviousLook | null>;
  /** Whether the tab's present page may be read. */
  mayRead(tabId: number): Promise<boolean>;
  now(): string;
  clock: Clock;
  /** An address for bytes inside this document, and its end. */
  keepFile(bytes: PhotoBytes): string;
  dropFile(address: string): void;
}
