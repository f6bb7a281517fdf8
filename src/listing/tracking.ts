/** Address parameters that only tell where a visitor came from. Own list, common practice, no source. */
const names =
  /^(?:utm_.+|gclid|dclid|fbclid|msclkid|yclid|igshid|mc_[ce]id|_ga|ref|ref_|referrer|source|src|campaign|spm|scm|trk)$/i;

/** Whether a parameter of an address tracks the visitor and names no page: with it and without it is one page. */
export const isTracking = (parameter: string): boolean => names.test(parameter);
