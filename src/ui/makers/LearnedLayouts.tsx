import type { ComponentChildren } from 'preact';
import type { Candidate, Learned } from '../../code';
import { strings } from '../../words';
import { sentence } from '../parts/ProblemNote';
import type { Editing } from './editing';
import { type Asked, chanceWords, outcomeWords, systemOf, tellingWords, withLearned } from './learned';

const words = strings.makers.learn;

interface Props {
  edit: Editing;
  asked: Asked;
  learned: Learned;
}

/** The outcome in a sentence, and the further example that would settle what is open. */
export const Outcome = ({ asked, learned }: Omit<Props, 'edit'>) => (
  <>
    <strong>{outcomeWords(learned, asked.examples, asked.wrong)}</strong> {tellingWords(learned)}
  </>
);

/** What the teacher found: the layouts that remain, each with a button that writes it into the file. */
export function LearnedLayouts({ edit, asked, learned }: Props) {
  const rowOf = (index: number) => words.example(asked.rows[index]!, asked.examples[index]!.code);
  return (
    <section class="learn-found" aria-label={words.ranked}>
      {learned.unusable.map(({ index, why }) => (
        <p key={index} class="problem">
          {sentence(`${rowOf(index)}: ${why}`)}
        </p>
      ))}
      <ol>
        {learned.remaining.map((candidate, at) => (
          <li key={JSON.stringify(candidate.layout)} class="entry">
            <Found edit={edit} asked={asked} candidate={candidate} number={at + 1} rowOf={rowOf}>
              {learned.tellingCode && (
                <p>{words.wouldRead(learned.tellingCode.code, learned.tellingCode.readings[at] ?? null)}</p>
              )}
            </Found>
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
  children,
}: {
  edit: Editing;
  asked: Asked;
  candidate: Candidate;
  number: number;
  rowOf: (index: number) => string;
  children: ComponentChildren;
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
      {children}
      <button
        type="button"
        aria-disabled={written !== null}
        onClick={() =>
          written === null && edit.change(strings.makers.steps.learn, [], withLearned(value, candidate, asked.examples))
        }
      >
        {words.write(number)}
      </button>
      <p role="status" class="hint">
        {written === null ? '' : words.written(written.id)}
      </p>
    </>
  );
}
