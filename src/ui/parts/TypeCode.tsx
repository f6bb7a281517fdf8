import { useState } from 'preact/hooks';
import { strings } from '../strings';

/** A code typed by hand goes the same way as a read one. */
export function TypeCode({ onType }: { onType: (code: string) => void }) {
  const [code, setCode] = useState('');
  return (
    <form
      class="type-code"
      onSubmit={(event) => {
        event.preventDefault();
        onType(code);
        setCode('');
      }}
    >
      <label for="typed-code">{strings.stamp.type}</label>
      <div class="row">
        <input
          id="typed-code"
          class="code"
          type="text"
          autocomplete="off"
          autocapitalize="characters"
          spellcheck={false}
          maxLength={200}
          aria-describedby="typed-code-hint"
          value={code}
          onInput={(event) => setCode(event.currentTarget.value)}
        />
        <button type="submit" disabled={code.trim() === ''}>
          {strings.stamp.typeAction}
        </button>
      </div>
      <p id="typed-code-hint" class="muted hint">
        {strings.stamp.typeHint}
      </p>
    </form>
  );
}
