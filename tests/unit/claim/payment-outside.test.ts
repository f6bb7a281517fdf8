import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a way to pay that is asked for, refused, or left to the buyer', () => {
  it.each<Told>([
    ['Payment by bank transfer please.', ['payment-outside']],
    ['No bank transfer please.', []],
    ['I never ask for bank transfers.', []],
    ['Bank transfer is not accepted.', []],
    ['Überweisung nehme ich nicht an.', []],
    ['Je refuse les virements.', []],
    ['By card or bank transfer.', []],
    ['By transfer through the site.', []],
    ['By bank transfer or through the site.', ['payment-outside']],
    ['By bank transfer instead of through the site.', ['payment-outside']],
    ['Bank transfer only when you hold it in your hands at collection.', []],
    ['If anybody asks you in my name for a bank transfer, tell me.', []],
    ['Write to me at lena.holt@post.example please.', ['payment-outside', 'payment-outside']],
    ['Write to me at lena.holt (at) post (dot) example please.', ['payment-outside', 'payment-outside']],
    ['Not through the site, please by bank transfer.', ['payment-outside']],
  ])('%s', (text, claims, title) => expect(told(['payment-outside'], text, title)).toEqual(claims));
});
