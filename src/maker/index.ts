export { builtInMakers } from './built-in';
export * from './edit';
export { findMaker } from './find';
export { type LiveExample, liveExamples } from './live';
export { type Choice, type Conflict, type Merge, mergeMakerFiles } from './merge';
export { plainName } from './name';
export { type MakerFileResult, parseMakerFile, readMakerFileText } from './parse';
export { pathWords } from './plain';
export type * from './types';
