export { isCutBy, withWholeLine } from './at-edge';
export { bare } from './bare';
export type {
  Box,
  FoundLine,
  PrintLine,
  PrintReader,
  PrintSymbol,
  PrintWord,
  StampEngines,
  StampNets,
} from './engines';
export { freeTexts } from './free-text';
export { closerSide, glanceAt, glanceSide } from './glance';
export { hasLengthOfCode, looksLikeCode } from './looks-like-code';
export type { FasterNets, LoadedNets, ModelCard, NetFiles, NetPair, NetSession, OnnxRuntime } from './net';
export { loadNets, modelCardSchema, netsWithFaster, stampNets } from './net';
export { shapesOf } from './one-shape';
export type { OpenPrintReader, TesseractFiles } from './print/tesseract';
export { openTesseract } from './print/tesseract';
export { printWhenNeeded } from './print/when-needed';
export { readStamp, type StampReading, stampReader } from './read-stamp';
export { weighRuns } from './runs';
export { textsBeside } from './texts-beside';
export type { Lattice, Measurement, StampLine } from './types';
export { latticeSchema, measurementSchema, photoReadSchema, stampLineSchema, stampLinesOf } from './types';
