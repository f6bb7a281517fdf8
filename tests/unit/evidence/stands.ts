import { type Evidence, type Gathered, gatherEvidence, pairsOf } from '../../../src/evidence';

/** Every pair that a rule compares, as it stands. */
export const stand = (evidence: readonly Evidence[]): string =>
  pairsOf(evidence)
    .map(({ rule, over, relation, hard, informs, narrows, inside, withheld }) =>
      [`${rule} over ${over}`, relation, hard && 'hard', informs, narrows && 'narrows', inside, withheld && 'withheld']
        .filter(Boolean)
        .join(' '),
    )
    .join('; ') || 'nothing';
export const gathered = (given: Partial<Gathered>) =>
  gatherEvidence({ claims: [], decodings: [], marks: [], maker: null, ...given });
export const shown = (turns: Record<string, string[]>) =>
  `${Object.entries(turns)
    .flatMap(([name, lines]) => [name, ...lines.map((line) => `  ${line}`)])
    .join('\n')}\n`;
