import type { Case, Correction, SentPhoto } from '../../case';
import type { Pick } from '../../listing/pick-types';
import type { Listing } from '../../listing/types';
import type { PhotoView } from '../../message/protocol';
import type { Problem } from '../../problem';

/** The photo that is being read, by its place on the page, and whether it looked the likeliest to show the stamp. */
export interface BeingRead {
  photo: number;
  likely: boolean;
}

/** Where the panel stands. `done` counts photos that were read or given up, `late` those that may still come. */
export type Stage =
  | { kind: 'opening' }
  | { kind: 'page' }
  | { kind: 'photos'; done: number; of: number; now: BeingRead | null }
  | { kind: 'stopped'; read: number; of: number }
  | { kind: 'done'; read: number; of: number; late: number }
  | { kind: 'lapsed' }
  | { kind: 'trouble'; problem: Problem };

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
  /** What the buyer set right, added or struck. */
  corrections: Correction[];
  /** Photos that came another way than by the page; they stand in the listing after its own. */
  sent: readonly SentPhoto[];
  /** Those that were taken out again, by id. */
  removedSent: readonly string[];
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
  corrections: [],
  sent: [],
  removedSent: [],
  picks: [],
};

export const isBusy = ({ kind }: Stage): boolean => kind === 'opening' || kind === 'page' || kind === 'photos';

/** How many of the listing's photos were read, and of how many. */
export const photosRead = ({ listing, views }: PanelState): { read: number; of: number } => ({
  read: Object.values(views).filter(({ read }) => read.state === 'read').length,
  of: listing?.photos.length ?? 0,
});
