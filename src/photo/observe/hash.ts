import { differenceHash } from '../hash';
import { defineObserver } from './observer';

/** The same photo seen again: 64 bits, 16 hex digits. */
export const hash = defineObserver({
  id: 'hash',
  gives: ['hash'],
  measure: (_, { grey }) => [{ what: 'hash', value: differenceHash(grey) }],
});
