import type { Evidence } from '../types';

/** What only bounds one end agrees with too much to count. */
export const isBounded = ({ spans }: Evidence): boolean => spans.every(({ from, to }) => from !== null && to !== null);
