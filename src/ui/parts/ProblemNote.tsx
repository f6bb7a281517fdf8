import type { Problem } from '../../problem';
import { chosenLanguage, sayProblem } from '../../words';

interface Props {
  problem: Problem;
  /** Says first which file or photo it is. */
  named?: boolean;
}

/** A failure in one or two sentences: what, and what the user can do. */
export function ProblemNote({ problem, named = false }: Props) {
  const { what, remedy } = saidProblem(problem);
  return (
    <p class="problem">
      {sentence(named ? `${problem.where}: ${what}` : what)} <span class="muted">{remedy}</span>
    </p>
  );
}

/** A failure with its words in the language of the screens. */
export const saidProblem = (problem: Problem) => ({ ...problem, ...sayProblem(problem, chosenLanguage()) });

export const sentence = (words: string): string =>
  `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? '' : '.'}`;
