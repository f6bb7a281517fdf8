import { useRef, useState } from 'preact/hooks';
import type { Taken } from '../../../store/taken';
import { strings } from '../../../words';
import { takeFromSource } from './take-from-source';

const words = strings.take;

/** Brings a page that is not in a tab: as a saved file, or its source pasted. */
export function BringPage({ onRead }: { onRead: (taken: Taken) => void }) {
  const [source, setSource] = useState('');
  const chooser = useRef<HTMLInputElement>(null);
  const read = (html: string, name: string) => onRead(takeFromSource(html, name));
  return (
    <div class="take-bring">
      <button type="button" onClick={() => chooser.current?.click()}>
        {words.choose}
      </button>
      <input
        ref={chooser}
        type="file"
        accept=".html,.htm,text/html"
        class="visually-hidden"
        tabIndex={-1}
        aria-label={words.choose}
        onChange={async ({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          currentTarget.value = '';
          if (file) read(await file.text(), file.name);
        }}
      />
      <label class="field-label">
        {words.paste}
        <textarea rows={6} value={source} onInput={({ currentTarget }) => setSource(currentTarget.value)} />
      </label>
      <button type="button" disabled={source.trim() === ''} onClick={() => read(source, words.pasted)}>
        {words.read}
      </button>
    </div>
  );
}
