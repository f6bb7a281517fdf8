export {
  type Dossier,
  type DossierKind,
  type DossierStamp,
  dossierOf,
  type NotLookedAt,
  type NumberedFinding,
} from './dossier';
export { listingKey } from './listing-key';
export type { Loss, Mark } from './loss';
export { type ReadableRow, rowOf, type WatchRow } from './rows';
export type { Change } from './store';
export {
  type Imported,
  type KeptPicture,
  type Look,
  mostNoteCharacters,
  type OtherNote,
  statusSchema,
  type WatchRecord,
  type WatchStatus,
} from './types';
export { openWatchList, type SavedNote, type WatchList, type WatchPorts } from './watch-list';
export { webLink } from './web-link';
