import { useState } from 'preact/hooks';
import type { Taken } from '../../../store/taken';
import { strings } from '../../../words';
import { FileChooser } from '../../parts/FileChooser';
import { takeFromSource } from './take-from-source';

const words = strings.take;

interface Props {
  /** The maker of the listing that the page is brought for; empty where none is known. */
  known: string;
  onRead: (taken: Taken) => void;
}

/** Brings a page that is not in a tab: as a saved file, or its source pasted. */
export function BringPage({ known, onRead }: Props) {
  const [source, setSource] = useState('');
  const read = (html: string, name: string) => onRead(takeFromSource(html, { from: name, known }));
  return (
    <div class="take-bring">
      <FileChooser
        label={words.choose}
        accept=".html,.htm,text/html"
        onFiles={async ([file]) => {
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
