import { useState } from 'preact/hooks';
import type { Reply } from '../../case';
import { strings } from '../../words';
import { dayWords } from '../day-words';
import { Fold } from '../parts/Fold';

const words = strings.message.replies;

interface Props {
  replies: readonly Reply[];
  /** Whether it was kept. */
  onReply: (text: string) => Promise<boolean>;
}

/** What the seller replied, each with its day; another is pasted, and what it claims is read with the listing's words. */
export function Replies({ replies, onReply }: Props) {
  const [text, setText] = useState('');
  return (
    <Fold part="replies" title={replies.length > 0 ? words.title : words.titleNone}>
      {replies.length > 0 && (
        <ol class="replies">
          {replies.map((reply) => (
            <li key={reply.at}>
              <p class="muted">{dayWords(reply.at)}</p>
              <blockquote>{reply.text}</blockquote>
            </li>
          ))}
        </ol>
      )}
      <form
        onSubmit={async (event) => {
          event.preventDefault();
          if (text.trim() !== '' && (await onReply(text))) setText('');
        }}
      >
        <label class="message-text">
          {words.paste}
          <textarea rows={4} value={text} onInput={({ currentTarget: { value } }) => setText(value)} />
        </label>
        <button type="submit" disabled={text.trim() === ''}>
          {words.keep}
        </button>
      </form>
    </Fold>
  );
}
