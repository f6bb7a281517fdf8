import type { Decoding } from '../../code/types';
import { strings } from '../../words';
import { sentence } from './ProblemNote';

/** Marks that stand beside a code, each with what its maker's file says of it. */
export const BesideCode = ({ decoding: { beside = [] } }: { decoding: Pick<Decoding, 'beside'> }) => (
  <>
    {beside.map(({ text, kind, means }) => (
      <p key={`${text} ${kind}`}>{sentence(strings.answer.beside(text, strings.answer.besideKinds[kind], means))}</p>
    ))}
  </>
);
