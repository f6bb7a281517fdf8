import * as z from 'zod';
import { spanSchema } from '../span/types';

/** A date that somebody states: the words, and what they mean. */
export const claimedDateSchema = z.strictObject({ words: z.string(), span: spanSchema });
export type ClaimedDate = z.infer<typeof claimedDateSchema>;

export const claimedDate = ({ words, span }: ClaimedDate): ClaimedDate => ({ words, span });
