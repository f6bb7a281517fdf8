import { useState } from 'preact/hooks';
import type { Question } from '../../question/types';
import { strings } from '../strings';

interface Props {
  questions: Question[];
  /** The whole polite message, as it is copied. */
  message: string;
}

/** What to ask, the most settling first, and one button that copies it all as one message. */
export function Questions({ questions, message }: Props) {
  const [outcome, setOutcome] = useState<'none' | 'copied' | 'failed'>('none');
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
            {question.words}{' '}
            <span class="muted">
              {question.wants === 'photo' ? `${strings.questions.photo} · ` : ''}
              {strings.questions.settles(question.settles.length)}
            </span>
          </li>
        ))}
      </ol>
      <button type="button" onClick={copy}>
        {strings.questions.copy}
      </button>
      <p role="status" class="muted hint">
        {outcome === 'copied' && strings.questions.copied}
        {outcome === 'failed' && strings.questions.notCopied}
      </p>
      {outcome === 'failed' && <textarea readOnly rows={8} aria-label={strings.questions.message} value={message} />}
    </section>
  );
}
