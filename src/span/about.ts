/** Years by which "about 1994" may be off either way. Own rule, common practice, no source. */
export const aboutYears = 5;
