import { useState } from 'preact/hooks';
import { type Case, findingsOf } from '../../case';
import type { Question } from '../../question/types';
import type { AskedQuestion } from '../../watch';
import { chosenLanguage, describeCheck, kit, sayQuestion, strings } from '../../words';
import { useFocusKept } from '../use-focus-kept';
import type { MessageDraft } from './use-message';

const words = strings.message;

/** What to ask, ticked, the most settling first: left out, moved up, said otherwise, or added by the buyer. */
interface Props {
  kase: Case;
  draft: MessageDraft;
  /** What was asked before, and when. */
  asked: readonly AskedQuestion[];
}

export function ToAsk({ kase, draft, asked }: Props) {
  const room = useFocusKept<HTMLElement>('#own-question');
  return (
    <section aria-labelledby="to-ask-title" ref={room}>
      <h3 id="to-ask-title">{words.toAsk}</h3>
      {draft.questions.length === 0 && <p>{words.nothing}</p>}
      <ol class="questions">
        {draft.questions.map((question, at) => (
          <Asked
            key={question.id}
            question={question}
            first={at === 0}
            kase={kase}
            draft={draft}
            before={asked.find(({ id }) => id === question.id)?.at ?? null}
          />
        ))}
      </ol>
      {draft.own.length > 0 && (
        <ul class="questions">
          {draft.own.map((own, at) => (
            <li key={own}>
              {own}{' '}
              <button type="button" class="small" aria-label={words.removeOwn(own)} onClick={() => draft.removeOwn(at)}>
                {words.removeShort}
              </button>
            </li>
          ))}
        </ul>
      )}
      <AddOwn onAdd={draft.addOwn} />
    </section>
  );
}

interface AskedProps {
  question: Question;
  first: boolean;
  kase: Case;
  draft: MessageDraft;
  /** When it was asked before. */
  before: string | null;
}

function Asked({ question, first, kase, draft, before }: AskedProps) {
  const [changing, setChanging] = useState(false);
  const { id, wants } = question;
  const said = draft.reworded.get(id) ?? sayQuestion(question, chosenLanguage());
  const settled = clearedUp(question, kase);
  return (
    <li>
      <label class="tick">
        <input
          type="checkbox"
          checked={draft.isAsked(id)}
          onChange={({ currentTarget: { checked } }) => draft.tick(id, checked)}
        />
        <span>
          {said}{' '}
          <span class="muted hint">
            {[
              before === null ? '' : words.askedOn(kit.day(before)),
              wants === 'photo' ? words.photo : '',
              settled === '' ? '' : words.clearsUp(settled),
            ]
              .filter(Boolean)
              .join('; ')}
          </span>
        </span>
      </label>
      {changing && (
        <textarea
          rows={3}
          aria-label={words.changed}
          value={said}
          onInput={({ currentTarget: { value } }) => draft.reword(id, value)}
        />
      )}
      <div class="row">
        {!first && (
          <button type="button" class="small" aria-label={words.up(said)} onClick={() => draft.moveUp(id)}>
            {words.upShort}
          </button>
        )}
        <button
          type="button"
          class="small"
          aria-label={words.change(said)}
          aria-expanded={changing}
          onClick={() => setChanging(!changing)}
        >
          {words.changeShort}
        </button>
        {draft.reworded.has(id) && (
          <button type="button" class="small" onClick={() => draft.reword(id, null)}>
            {words.asBefore}
          </button>
        )}
      </div>
    </li>
  );
}

/** What an answer would clear up, in the words of the findings. */
function clearedUp({ settles }: Question, kase: Case): string {
  const checks = findingsOf(kase)
    .filter(({ id }) => settles.includes(id))
    .map(({ check }) => check);
  const titles = [...new Set(checks)].map((id) => describeCheck({ id }, chosenLanguage()).failureTitle);
  return kit.list(titles.slice(0, 2).map(kit.quote));
}

function AddOwn({ onAdd }: { onAdd: (words: string) => void }) {
  const [own, setOwn] = useState('');
  return (
    <form
      class="row"
      onSubmit={(event) => {
        event.preventDefault();
        if (own.trim() === '') return;
        onAdd(own);
        setOwn('');
      }}
    >
      <label class="own-question">
        {words.own}
        <input id="own-question" type="text" value={own} onInput={({ currentTarget: { value } }) => setOwn(value)} />
      </label>
      <button type="submit" disabled={own.trim() === ''}>
        {words.addOwn}
      </button>
    </form>
  );
}
