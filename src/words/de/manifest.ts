import type { manifest as english } from '../en/manifest';
import type { Widen } from '../widen';

/** What stores, and the browser's page of extensions, say of this one. */
export const manifest: Widen<typeof english> = {
  description:
    'Liest ein Angebot aus zweiter Hand, entziffert den Stempel des Herstellers, zeigt, was passt, was nicht und was zu fragen ist.',
};
