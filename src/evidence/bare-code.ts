/** A code without what stands between its characters, in capitals: however it is written, one code has one form. */
export const bareCode = (written: string): string =>
  written
    .normalize('NFKC')
    .replace(/[\p{P}\p{Z}\p{S}]/gu, '')
    .toUpperCase();
