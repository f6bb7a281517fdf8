/** The letters and digits of a text, without the signs between them. */
export const bare = (text: string): string => text.replace(/[^A-Z0-9]/g, '');
