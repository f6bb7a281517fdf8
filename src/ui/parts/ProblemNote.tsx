import type { Problem } from '../../problem';

/** A failure in one or two sentences: what, and what the user can do. */
export const ProblemNote = ({ problem }: { problem: Problem }) => (
  <p class="problem">
    {sentence(problem.what)} <span class="muted">{problem.remedy}</span>
  </p>
);

export const sentence = (words: string): string =>
  `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? '' : '.'}`;
