import { useId, useState } from 'preact/hooks';
import { strings } from '../../words';

/** No stamp is longer; a whole description pasted by mistake is. */
const longestCode = 60;

/** A code typed by hand goes the same way as a read one. */
export function TypeCode({ onType }: { onType: (code: string) => void }) {
  // A code may be typed in two places of one screen: of the page's piece, and of a photo that was dropped.
  const id = useId();
  const [code, setCode] = useState('');
  const tooLong = code.trim().length > longestCode;
  return (
    <form
      class="type-code"
      onSubmit={(event) => {
        event.preventDefault();
        if (tooLong) return;
        onType(code);
        setCode('');
      }}
    >
      <label for={id}>{strings.stamp.type}</label>
      <div class="row">
        <input
          id={id}
          class="code"
          type="text"
          autocomplete="off"
          autocapitalize="characters"
          spellcheck={false}
          aria-invalid={tooLong}
          aria-describedby={`${id}-hint`}
          value={code}
          onInput={(event) => setCode(event.currentTarget.value)}
        />
        <button type="submit" disabled={code.trim() === '' || tooLong}>
          {strings.stamp.typeAction}
        </button>
      </div>
      <p id={`${id}-hint`} class={tooLong ? 'problem' : 'muted hint'} role={tooLong ? 'alert' : undefined}>
        {tooLong ? strings.stamp.typeTooLong(longestCode) : strings.stamp.typeHint}
      </p>
    </form>
  );
}
