/** "https://schema.org/MerchantReturnNotPermitted" as "merchant return not permitted": a term of the page's data in words. */
export const termWords = (term: string): string =>
  term
    .replace(/^.*[/#:]/, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
