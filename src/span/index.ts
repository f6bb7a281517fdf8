export * from './calendar';
export { type Period, partialDate, period } from './period-schema';
export * from './periods';
export * from './set';
export { isoDay, type Precision, precision, type Span, spanSchema } from './types';
