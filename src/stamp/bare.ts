/** The letters and digits of a text, without the signs between them: those may be there or not, and make no other code. */
export const bare = (text: string): string => text.replace(/[^A-Z0-9]/g, '');
