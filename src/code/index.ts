export { periodsOf } from './book';
export { type DecodeOptions, decodeLattice, decodeText, freeDecode } from './decode';
export { decodeExactly } from './exact';
export { type CodeFamily, codeFamilies } from './families';
export { readStated, readsAs, readsOf } from './reads';
export { acceptanceLevel } from './settle';
export { type ExampleFault, testSystem } from './system';
export { typedLattice } from './typed';
export type { Decoding, Misfit, Nearest, Reading } from './types';
