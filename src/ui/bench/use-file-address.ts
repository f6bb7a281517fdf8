import { useEffect, useMemo } from 'preact/hooks';

/** An address inside this document for bytes, as long as they are shown. */
export function useFileAddress(photo: Blob | null): string | null {
  const file = useMemo(() => (photo ? URL.createObjectURL(photo) : null), [photo]);
  useEffect(() => () => (file ? URL.revokeObjectURL(file) : undefined), [file]);
  return file;
}
