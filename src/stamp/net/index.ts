export type { ModelCard } from './card';
export { modelCardSchema } from './card';
export type { NetSession } from './nets';
export { stampNets } from './nets';
export type { NetFiles, OnnxRuntime } from './onnx';
export { openNets } from './onnx';
