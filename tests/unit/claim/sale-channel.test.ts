import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('how it was first sold, and places that are only named', () => {
  it.each<Told>([
    ['Bought at the outlet.', ['channel outlet']],
    ['Not from an outlet.', []],
    ['From an outlet? No, from the shop.', []],
    ['Near the outlet we can meet.', []],
    ['There was an outlet next door where I got the shoes.', []],
    ['Sample bag, never sold.', ['channel sample-sale']],
    ['A sample of the leather is in the pocket.', []],
    ['My aunt says it is from the outlet.', []],
  ])('%s', (text, claims, title) => expect(told(['channel', 'returns'], text, title)).toEqual(claims));
});
