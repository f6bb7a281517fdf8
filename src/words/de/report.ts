import type { Kit } from '../kit';

/** What a program says of itself, behind what it means. */
export const report = (said: string, kit: Kit) => (said === '' ? '' : ` (das Programm meldet ${kit.quote(said)})`);
