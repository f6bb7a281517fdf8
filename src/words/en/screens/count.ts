/** A number with its noun: "1 gap", "3 gaps". */
export const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;
