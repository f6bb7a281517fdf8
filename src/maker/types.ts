/** The maker file as zod sees it is in schema.ts; its types are inferred there and named here for other folders. */
export type { CodeSystem, Construction, Layout, MakerFile, Model, Period, Plant, Slot } from './schema';
