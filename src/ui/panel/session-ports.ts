import type { Case, Correction, Reply, SentPhoto } from '../../case';
import type { PreviousLook } from '../../check/types';
import type { MakerFile } from '../../maker/types';
import type { OutputOf, PhotoBytes } from '../../message/protocol';
import type { PhotoRead } from '../../photo/read-types';
import type { Result } from '../../problem';
import type { Reader } from '../../reader';
import type { BroughtPhoto } from '../../watch';
import type { Clock } from './read-photos';
import type { PanelState } from './state';

/** What was saved of a listing. */
export interface Earlier {
  look: PreviousLook;
  /** What the seller replied, as it was kept. */
  replies?: Reply[];
  corrections: Correction[];
  /** Photos that came another way than by the page, as they were kept. */
  sent?: readonly BroughtPhoto[];
}

/** The watch list, opened while the page is still read. It is asked once and closed, or closed unasked. */
export interface LookBack {
  /** The saved look at a listing before this one, and what was set right of it; null where nothing is or may be kept. */
  at(url: string, incognito: boolean): Promise<Earlier | null>;
  end(): void;
}

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
    corrections: Correction[];
    makers: MakerFile[];
    now: string;
    replies?: readonly Reply[];
    sent?: readonly SentPhoto[];
    previous?: PreviousLook | undefined;
  }): Case;
  lookBack(): LookBack;
  /** Whether the tab's present page may be read. */
  mayRead(tabId: number): Promise<boolean>;
  now(): string;
  clock: Clock;
  /** An address for bytes inside this document, and its end. */
  keepFile(bytes: PhotoBytes): string;
  dropFile(address: string): void;
}
