import type { Folded } from '../../text';

/** Words that are folded already, for a search: their places are those of what is handed in. */
export const asFolded = (text: string): Folded => ({ source: text, text, at: null });
