export type { ModelCard } from './card';
export { modelCardSchema } from './card';
export type { FasterNets, NetPair, NetsWithFaster } from './faster';
export { netsWithFaster } from './faster';
export type { NetSession } from './nets';
export { stampNets } from './nets';
export type { LoadedNets, NetFiles, OnnxRuntime } from './onnx';
export { loadNets } from './onnx';
