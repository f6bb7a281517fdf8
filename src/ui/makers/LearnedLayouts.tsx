import type { Candidate, Learned } from '../../code';
import { sentence } from '../parts/ProblemNote';
import { strings } from '../strings';
import type { Editing } from './editing';
import { type Asked, chanceWords, outcomeWords, systemOf, tellingWords, withLearned } from './learned';

const words = strings.makers.learn;

interface Props {
  edit: Editing;
  asked: Asked;
  learned: Learned;
}

/** What the teacher found: the layouts that remain, what would settle it, and a button that writes one down. */
export function LearnedLayouts({ edit, asked, learned }: Props) {
  const telling = tellingWords(learned);
  const rowOf = (index: number) => words.example(asked.rows[index]!, asked.examples[index]!.code);
  return (
    <section class="learn-found" aria-label={words.ranked}>
      <p role="status">
        <strong>{outcomeWords(learned, asked.examples, asked.wrong)}</strong> {telling}
      </p>
      {learned.unusable.map(({ index, why }) => (
        <p key={index} class="problem">
          {sentence(`${rowOf(index)}: ${why}`)}
        </p>
      ))}
      <ol>
        {learned.remaining.map((candidate, at) => (
          <li key={JSON.stringify(candidate.layout)} class="entry">
            <Found edit={edit} asked={asked} candidate={candidate} number={at + 1} rowOf={rowOf} />
            {learned.tellingCode && (
              <p class="hint">{words.wouldRead(learned.tellingCode.code, learned.tellingCode.readings[at] ?? null)}</p>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

function Found({
  edit,
  asked,
  candidate,
  number,
  rowOf,
}: {
  edit: Editing;
  asked: Asked;
  candidate: Candidate;
  number: number;
  rowOf: (index: number) => string;
}) {
  const value = edit.at([]) as Record<string, unknown>;
  const written = systemOf(value, candidate);
  const [from, to] = candidate.used;
  return (
    <>
      <h4>{words.layout(number)}</h4>
      <ul>
        {candidate.words.map((part) => (
          <li key={part}>{sentence(part)}</li>
        ))}
      </ul>
      <p class="hint">
        {words.explains(candidate.explains.length, asked.examples.length)}{' '}
        {candidate.wrong.length > 0 && `${words.takenWrong(candidate.wrong.map(rowOf).join('; '))} `}
        {words.period(from, to ?? strings.makers.period.to)} {chanceWords(candidate.byChance)}
      </p>
      <button
        type="button"
        aria-disabled={written !== null}
        onClick={() => written === null && edit.set([], withLearned(value, candidate, asked.examples))}
      >
        {words.write(number)}
      </button>
      <p role="status" class="hint">
        {written === null ? '' : words.written(written.id)}
      </p>
    </>
  );
}
