/** The characters of a line that are measured: spaces part words and are none. */
export const lettersOf = (text: string): string[] => [...text].filter((letter) => letter.trim() !== '');
