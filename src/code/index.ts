export { withMarksBeside } from './beside';
export type { Beside } from './beside-types';
export { type DecodeOptions, decodeLattice, decodeText, freeDecode } from './decode';
export { decodeLine, leftOpen } from './decode-line';
export { type Difference, differenceSchema, differenceWords } from './difference';
export { encodeReading } from './encode';
export { decodeExactly } from './exact';
export { type Expected, expectedSchema, expectedWords } from './expected';
export { type CodeFamily, codeFamilies } from './families';
export type { ExampleFaultSays, LayoutFaultSays } from './fault';
export { differencesBetween } from './nearest';
export { readStated, readsAs, readsOf, spanReads } from './reads';
export { acceptanceLevel } from './settle';
export { formOfKind, kindOfSlot, type Slot, type SlotKindName, slotForms, slotKinds } from './slot';
export type { SlotChoice, SlotField, SlotWord } from './slot/kind';
export { decodeSystem, type ExampleFault, testSystem } from './system';
export {
  type Candidate,
  type Doubted,
  type Explanation,
  type KnownCode,
  type KnownFault,
  type KnownRow,
  type LayoutSays,
  type Learned,
  learning,
  learnSystem,
  type OpenReason,
  readKnownList,
  type TellingCode,
  type Unusable,
  type Work,
  writeLearned,
} from './teacher';
export { type PartTells, type PlaceOfCode, placeOfCodeSchema, type ReadingReason } from './tells';
export { typedLattice } from './typed';
export type { Decoding, LeftOpen, Misfit, Nearest, OtherNumber, Reading } from './types';
