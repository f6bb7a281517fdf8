export * from './calendar';
export * from './periods';
export * from './set';
export { isoDay, type Precision, precision, type Span, spanSchema } from './types';
