export { layOutAxis } from './axis';
export type { AxisBar, AxisLayout, AxisRow } from './axis-types';
export { type Gathered, gatherEvidence } from './gather';
export { reason } from './reason';
export type { AgreeingSet, Conflict, Explanation, Reasoning, Stretch } from './reasoning-types';
export { reasoningSchema } from './reasoning-types';
export { compareWeights, type Weighable, type Weight, weighFinding } from './strength';
export { stretchOf, stretchWords } from './stretch';
export type { Evidence } from './types';
