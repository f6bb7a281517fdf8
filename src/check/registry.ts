import { codeAgainstClaimedDate } from './code-against-claimed-date';
import { codeBeforeStamping } from './code-before-stamping';
import { codeFitsMaker } from './code-fits-maker';
import { codeShown } from './code-shown';
import { codeSlotPossible } from './code-slot-possible';
import { codeSystemInUse } from './code-system-in-use';
import { constructionAgainstDate } from './construction-against-date';
import type { Check } from './frame';
import { newPricePlausible } from './new-price-plausible';
import { partsShown } from './parts-shown';
import { paymentInside } from './payment-inside';
import { plantAgainstOrigin } from './plant-against-origin';
import { plantInUse } from './plant-in-use';
import { returnTerms } from './return-terms';
import { saleChannel } from './sale-channel';
import { sellerRecord } from './seller-record';
import { sizeAgainstModel } from './size-against-model';
import { stampCloseUp } from './stamp-close-up';
import { stampLegible } from './stamp-legible';

/** Every check, in the order in which a case lists them. A check that is not here does not run. */
export const checks: readonly Check[] = [
  codeFitsMaker,
  codeSlotPossible,
  codeAgainstClaimedDate,
  codeSystemInUse,
  plantInUse,
  codeShown,
  codeBeforeStamping,
  plantAgainstOrigin,
  constructionAgainstDate,
  sizeAgainstModel,
  newPricePlausible,
  saleChannel,
  stampLegible,
  stampCloseUp,
  partsShown,
  returnTerms,
  sellerRecord,
  paymentInside,
];
