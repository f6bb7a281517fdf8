import type { ComponentChildren } from 'preact';
import type { Candidate, Explanation, Learned } from '../../code';
import { strings } from '../../words';
import { sentence } from '../parts/ProblemNote';
import type { Editing } from './editing';
import { type Asked, chanceWords, doubtWords, outcomeWords, systemsOf, tellingWords, withLearned } from './learned';
import { type SlotValue, wholeSlotWords } from './slot-words';

const words = strings.makers.learn;

interface Props {
  edit: Editing;
  asked: Asked;
  learned: Learned;
}

/** The outcome in a sentence, and the further example that would settle what is open. */
export const Outcome = ({ asked, learned }: Omit<Props, 'edit'>) => (
  <>
    <strong>{outcomeWords(learned, asked.examples)}</strong> {tellingWords(learned)}
  </>
);

/** What the teacher found: what remains, each with a button that writes it into the file, and the codes it doubts. */
export function LearnedLayouts({ edit, asked, learned }: Props) {
  const rowOf = (index: number) => words.example(asked.rows[index]!, asked.examples[index]!.code);
  return (
    <section class="learn-found" aria-label={words.ranked}>
      {learned.unusable.map(({ index, why }) => (
        <p key={index} class="problem">
          {sentence(`${rowOf(index)}: ${words.unusable(why)}`)}
        </p>
      ))}
      {learned.doubted.length > 0 && (
        <>
          <h4>{words.doubted.title}</h4>
          <ul class="learn-doubted">
            {learned.doubted.map((one) => (
              <li key={one.index}>{sentence(doubtWords(one, rowOf(one.index)))}</li>
            ))}
          </ul>
        </>
      )}
      <ol>
        {learned.remaining.map((explanation, at) => (
          <li key={JSON.stringify(explanation.eras.map(({ layout }) => layout))} class="entry">
            <Found edit={edit} asked={asked} explanation={explanation} number={at + 1}>
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
  explanation,
  number,
  children,
}: {
  edit: Editing;
  asked: Asked;
  explanation: Explanation;
  number: number;
  children: ComponentChildren;
}) {
  const value = edit.at([]) as Record<string, unknown>;
  const written = systemsOf(value, explanation);
  const { eras, explains, byChance } = explanation;
  const write = () =>
    written === null && edit.change(strings.makers.steps.learn, [], withLearned(value, explanation, asked.examples));
  return (
    <>
      <h4>{words.layout(number)}</h4>
      {eras.map((era, at) => (
        <Era
          key={JSON.stringify(era.layout)}
          era={era}
          name={eras.length > 1 ? [words.earlier, words.later][at] : null}
        />
      ))}
      <p class="hint">
        {words.explains(explains.length, asked.examples.length)} {chanceWords(byChance)}
      </p>
      {children}
      <button type="button" aria-disabled={written !== null} onClick={write}>
        {words.write(number)}
      </button>
      <p role="status" class="hint">
        {written?.map(words.written).join(' ')}
      </p>
    </>
  );
}

/** One system: its slots in order, and the years from which it is known. */
function Era({ era: { layout, used }, name }: { era: Candidate; name: string | null | undefined }) {
  const [from, to] = used;
  return (
    <>
      {name && <h5>{name}</h5>}
      <ol class="learn-slots">
        {layout.map((slot, at) => (
          <li key={at}>{wholeSlotWords(slot as SlotValue)}</li>
        ))}
      </ol>
      <p class="hint">{words.period(from, to ?? strings.makers.period.to)}</p>
    </>
  );
}
