import type { Finding } from '../check/types';
import { allFindings } from './set-aside';
import type { Case } from './types';

export { answerOf, type CaseAnswer, type FormReading, type SeenIn, type StampAnswer } from './answer';
export { buildCase, type CaseInput, lookAt, previousOf } from './build';
export { correctedRead, isOfCorrection } from './corrected';
export { adjustmentOf, correct, findMeant, nameWithin, photoMeant, typedCode, undo } from './correction';
export {
  type Correction,
  correctionSchema,
  mostReasonCharacters,
  type NewCorrection,
  type PhotoMeant,
} from './correction-types';
export { cutLine } from './cut-line';
export { demoListing } from './demo-listing';
export { type CaseHead, headOf } from './head';
export { isLoose, looseListing } from './loose-listing';
export { choosePiece } from './lot';
export { makerByHand, makerGuessed, makerNamed } from './maker-named';
export { type MarkOnPhoto, marksOnPhoto } from './measured';
export type { CaseObservation } from './measured-types';
export { liftPhotoRead } from './older-photo-types';
export { liftTypedCodes } from './older-typed-codes';
export { type PartTag, type Proposal, partsToTag, proposalsOf, tagPart, tagsOf } from './part-tags';
export { photoNotes } from './photo-notes';
export { sameData } from './same-data';
export {
  type ComparablePhoto,
  comparablePhotos,
  isLikeness,
  lacksLikeness,
  type SamePhotoPair,
  samePhotosAmong,
  withLikenessOfPicture,
} from './same-photos';
export { saysLittle } from './says-little';
export { ofPage, withMoreSent, withSentPhotos } from './sent-photos';
export { asideFor, type FindingSetAside, setAsideIn } from './set-aside';
export { otherPieces, stampIsOn, stampsPlaced } from './stamp-piece';
export { fileFromCase } from './start-file';
export { type Telling, tellingsOf } from './telling';
export { type Case, type CaseLot, caseSchema, type Reply, type SentPhoto } from './types';
export { type WeighedFinding, weighedFindings } from './weighed-findings';

/** Every finding of a case, in the order of its checks, also what the buyer set aside. */
export const findingsOf = (built: Case): Finding[] => allFindings(built.outcomes);
