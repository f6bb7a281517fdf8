import type { Proposal } from './types';

/** How the words of a proposal were joined, by the form of what they stand in: cells, a term with its definition, sentences. */
const joints = { table: / \| | … /, definition: /: (.*)/s, list: / \| | … /, prose: / … / };

/** A proposal's words as they stand on the page: what was joined there is apart. */
export const piecesOf = ({ words, at }: Pick<Proposal, 'words' | 'at'>): string[] =>
  words.split(joints[at.form]).filter((piece) => piece.trim() !== '');
