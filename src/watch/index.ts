export {
  type Dossier,
  type DossierKind,
  type DossierStamp,
  dossierOf,
  type NotLookedAt,
  type NumberedFinding,
} from './dossier';
export { listingKey } from './listing-key';
export type { Imported } from './transfer';
export type { GenerationCounter, KeptPicture, WatchRecord, WatchRow, WatchStatus } from './types';
export { statusSchema } from './types';
export { openWatchList, type WatchList, type WatchPorts } from './watch-list';
