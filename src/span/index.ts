export * from './about';
export * from './calendar';
export * from './periods';
export * from './set';
// Their schemas stand in ./types: whoever calculates with spans, the script in the page too, needs no validation.
export type { Period, Precision, Span } from './types';
