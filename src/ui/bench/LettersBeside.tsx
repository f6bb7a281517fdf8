import type { Case } from '../../case';
import { LettersHeld } from './LettersHeld';
import type { MeasuredMark } from './use-marks';
import { useReferences } from './use-references';

/** A measured line beside what there is of its maker: lines of the buyer's other cases, and pictures of the maker's file. */
export const LettersBeside = ({ kase, one }: { kase: Case; one: MeasuredMark }) => (
  <LettersHeld one={one} maker={kase.maker} references={useReferences(kase)} />
);
