import type { Evidence } from '../types';

/** A mark that only bounds one end agrees with too much to be worth saying. */
export const isBounded = ({ spans }: Evidence): boolean => spans.every(({ from, to }) => from !== null && to !== null);
