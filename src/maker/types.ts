/** The maker file as zod sees it is in schema.ts; its types are inferred there and named here for other folders. */
export type { FileNumber } from './number-schema';
export type {
  CarrierKind,
  CodeSystem,
  Construction,
  Entry,
  FilePrice,
  Layout,
  MakerFile,
  Model,
  Period,
  Plant,
  Run,
  Size,
  Slot,
} from './schema';
