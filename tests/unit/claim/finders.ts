import type { Claim } from '../../../src/claim';
import { appraisedClaims } from '../../../src/claim/appraised';
import { codeClaims } from '../../../src/claim/code';
import { conditionClaims } from '../../../src/claim/condition';
import { hedgedAuthorshipClaims } from '../../../src/claim/hedged-authorship';
import { dateClaims } from '../../../src/claim/made';
import { makerClaims } from '../../../src/claim/maker';
import { materialClaims } from '../../../src/claim/material';
import { measureClaims } from '../../../src/claim/measure';
import { modelClaims } from '../../../src/claim/model';
import { noCodeClaims } from '../../../src/claim/no-code';
import { originClaims } from '../../../src/claim/origin';
import { type ClaimDraft, passagesOf } from '../../../src/claim/passage';
import { paymentOutsideClaims } from '../../../src/claim/payment-outside';
import { replacedClaims } from '../../../src/claim/replaced';
import { returnsClaims } from '../../../src/claim/returns';
import { saleChannelClaims } from '../../../src/claim/sale-channel';
import { familyClaims } from '../../../src/claim/word-families';
import type { Listing } from '../../../src/listing/types';
import { ondrasse } from './listing-of';

export type Finder = (listing: Listing) => (Claim | ClaimDraft)[];
/** The finders of claims by the names under which sentences for them are kept. */
export const finders: Record<string, Finder> = {
  appraised: (listing) => appraisedClaims(passagesOf(listing), listing.readAt),
  code: (listing) => codeClaims(passagesOf(listing), [ondrasse]),
  condition: (listing) => conditionClaims(passagesOf(listing), listing),
  hedged: (listing) => hedgedAuthorshipClaims(passagesOf(listing), [ondrasse], null),
  'hedged beside another': (listing) =>
    hedgedAuthorshipClaims(passagesOf(listing), [ondrasse], { names: ['Velmont'], file: null }),
  date: (listing) => dateClaims(passagesOf(listing), listing.readAt, [ondrasse]),
  maker: (listing) => makerClaims(passagesOf(listing), listing, [ondrasse]),
  material: (listing) => materialClaims(passagesOf(listing), listing, [ondrasse]),
  'no code': (listing) => noCodeClaims(passagesOf(listing)),
  payment: (listing) => paymentOutsideClaims(passagesOf(listing), listing),
  replaced: (listing) => replacedClaims(passagesOf(listing), listing.readAt),
  family: (listing) => familyClaims(passagesOf(listing), listing.readAt),
  'sale channel': (listing) => saleChannelClaims(passagesOf(listing)),
  origin: (listing) => originClaims(passagesOf(listing)),
  model: (listing) => modelClaims(passagesOf(listing), listing, [ondrasse], true),
  measure: (listing) => measureClaims(passagesOf(listing), listing),
  returns: (listing) => returnsClaims(passagesOf(listing), listing),
};

/** Of the name under which sentences stand: their finder's, without what they are about, and that of the file they are kept in. */
export const finderIn = (name: string): string => name.split(', ')[0] ?? '';
export const fileOf = (name: string): string => name.replaceAll(/,? /g, '-');
