export { type Gathered, gatherEvidence } from './gather';
export type { Evidence } from './types';
