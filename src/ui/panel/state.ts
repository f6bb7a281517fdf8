import type { PhotoView } from '../../bridge/protocol';
import type { Case } from '../../case';
import type { Listing, Pick } from '../../listing/types';
import type { Problem } from '../../problem';

/** Where the panel stands. `at` and `of` count photos from 1. */
export type Stage =
  | { kind: 'opening' }
  | { kind: 'page' }
  | { kind: 'photos'; at: number; of: number }
  | { kind: 'stopped'; read: number; of: number }
  | { kind: 'done'; read: number; of: number }
  | { kind: 'lapsed' }
  | { kind: 'trouble'; problem: Problem };

export interface TypedCode {
  photoId: string | null;
  code: string;
}

export interface PanelState {
  stage: Stage;
  /** Whether the tab shows another page since it was read, and whether that one may be read. */
  moved: 'no' | 'readable' | 'lapsed';
  incognito: boolean;
  listing: Listing | null;
  case: Case | null;
  views: Record<string, PhotoView>;
  /** Addresses of the fetched photos inside this document (blob:), by photo id. */
  files: Record<string, string>;
  typedCodes: TypedCode[];
  /** Fields that the user pointed at on this site. */
  picks: Pick[];
}

export const blankState: PanelState = {
  stage: { kind: 'opening' },
  moved: 'no',
  incognito: false,
  listing: null,
  case: null,
  views: {},
  files: {},
  typedCodes: [],
  picks: [],
};

export const isBusy = ({ kind }: Stage): boolean => kind === 'opening' || kind === 'page' || kind === 'photos';
