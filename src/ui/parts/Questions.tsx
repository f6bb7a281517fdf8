import { useState } from 'preact/hooks';
import type { Question } from '../../question/types';
import {
  chosenLanguage,
  languageNames,
  type MessageLanguage,
  messageLanguages,
  sayQuestion,
  strings,
} from '../../words';

interface Props {
  questions: Question[];
  /** The listing's language, in which the seller most likely reads. */
  language: MessageLanguage;
  /** The whole polite message, as it is copied. */
  messageIn: (language: MessageLanguage) => string;
}

/** What to ask, the most settling first, and one button that copies it all as one message. */
export function Questions({ questions, language, messageIn }: Props) {
  const [chosen, setChosen] = useState<MessageLanguage | null>(null);
  const [outcome, setOutcome] = useState<'none' | 'copied' | 'failed'>('none');
  const written = chosen ?? language;
  const message = messageIn(written);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(message);
      setOutcome('copied');
    } catch {
      setOutcome('failed');
    }
  };
  if (questions.length === 0) return null;
  return (
    <section aria-labelledby="questions-title">
      <h2 id="questions-title">{strings.questions.title}</h2>
      <ol class="questions">
        {questions.map((question) => (
          <li key={question.id}>
            {sayQuestion(question, chosenLanguage())}{' '}
            <span class="muted">
              {question.wants === 'photo' ? `${strings.questions.photo} · ` : ''}
              {strings.questions.settles(question.settles.length)}
            </span>
          </li>
        ))}
      </ol>
      <div class="row">
        <label class="row">
          {strings.questions.language}
          <select
            value={written}
            onChange={({ currentTarget }) => {
              setChosen(messageLanguages.find((one) => one === currentTarget.value) ?? null);
              setOutcome('none');
            }}
          >
            {messageLanguages.map((one) => (
              <option key={one} value={one} lang={one}>
                {languageNames[one]}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={copy}>
          {strings.questions.copy}
        </button>
      </div>
      <p role="status" class="muted hint">
        {outcome === 'copied' && strings.questions.copied}
        {outcome === 'failed' && strings.questions.notCopied}
      </p>
      {outcome === 'failed' && (
        <textarea readOnly rows={8} lang={written} aria-label={strings.questions.message} value={message} />
      )}
    </section>
  );
}
