export {
  type Dossier,
  type DossierKind,
  type DossierSent,
  type DossierStamp,
  dossierOf,
  type JudgedLook,
  type MeasuredPhoto,
  measuredOn,
  type NotLookedAt,
  type NumberedFinding,
  sentTo,
} from './dossier';
export type { KeptLettering } from './lettering';
export type { LikenessOfPicture } from './likenesses';
export { listingKey } from './listing-key';
export type { Loss, Mark } from './loss';
export type { Packing, WatchPorts } from './ports';
export { type ReadableRow, rowOf, type WatchRow } from './rows';
export type { SamePhotoElsewhere } from './same-photos';
export { caseOf, compareFound, type SavedCase, type SavedLook, type ThenAndNow } from './saved-case';
export type { BroughtPhoto } from './sent';
export type { Change } from './store';
export {
  type AskedQuestion,
  type DatedOtherwise,
  type FileContent,
  type Found,
  type Imported,
  type KeptFile,
  type KeptPicture,
  type Look,
  mostNoteCharacters,
  type OtherNote,
  statusSchema,
  type WatchRecord,
  type WatchStatus,
} from './types';
export { openWatchList, type SavedNote, type WatchList } from './watch-list';
export { webLink } from './web-link';
