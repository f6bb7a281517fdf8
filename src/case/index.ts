import type { Finding } from '../check/types';
import type { Case } from './types';

export { answerOf, type CaseAnswer, type FormReading, type SeenIn, type StampAnswer } from './answer';
export { buildCase, type CaseInput, lookAt, previousOf } from './build';
export { isOfCorrection } from './corrected';
export { adjustmentOf, correct, findMeant, nameWithin, photoMeant, typedCode, undo } from './correction';
export { type Correction, correctionSchema, type NewCorrection, type PhotoMeant } from './correction-types';
export { type CaseHead, headOf } from './head';
export { liftPhotoRead } from './older-photo-types';
export { liftTypedCodes } from './older-typed-codes';
export { saysLittle } from './says-little';
export { fileFromCase } from './start-file';
export { type Case, caseSchema } from './types';
export { type WeighedFinding, weighedFindings } from './weighed-findings';

/** Every finding of a case, in the order of its checks. */
export const findingsOf = (built: Case): Finding[] =>
  built.outcomes.flatMap((outcome) => (outcome.outcome === 'speaks' ? outcome.findings : []));
