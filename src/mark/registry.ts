import { barcode } from './barcode';
import { careLabel } from './care-label';
import { conventionMark } from './convention-mark';
import type { Mark } from './define';
import { fastener } from './fastener';
import { fibreLaw } from './fibre-law';
import { hallmarkDateLetter } from './hallmark-date-letter';
import { hallmarkFineness } from './hallmark-fineness';
import { originWording } from './origin-wording';
import { patentDate } from './patent-date';
import { phoneNumber } from './phone-number';
import { postalCode } from './postal-code';
import { tagCurrency } from './tag-currency';
import { ukDiamondMark } from './uk-diamond-mark';
import { ukRegisteredDesign } from './uk-registered-design';
import { usDesignPatent } from './us-design-patent';
import { usPatent } from './us-patent';
import { usTextileNumber } from './us-textile-number';
import { webAddress } from './web-address';

/** Every public mark, in the order in which the screen shows them. A test holds this list complete. */
export const marks: readonly Mark[] = [
  originWording,
  usPatent,
  usDesignPatent,
  patentDate,
  ukRegisteredDesign,
  ukDiamondMark,
  hallmarkDateLetter,
  hallmarkFineness,
  conventionMark,
  usTextileNumber,
  fibreLaw,
  careLabel,
  fastener,
  postalCode,
  phoneNumber,
  barcode,
  webAddress,
  tagCurrency,
];
