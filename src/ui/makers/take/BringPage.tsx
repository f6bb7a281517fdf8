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
  const [isPdf, setIsPdf] = useState(false);
  const read = (html: string, name: string) => onRead(takeFromSource(html, { from: name, known }));
  return (
    <div class="take-bring">
      <FileChooser
        label={words.choose}
        accept=".html,.htm,.txt,.pdf,text/html,text/plain,application/pdf"
        onFiles={async ([file]) => {
          if (!file) return;
          const text = await file.text();
          const pdf = text.startsWith('%PDF');
          setIsPdf(pdf);
          if (!pdf) read(text, file.name);
        }}
      />
      <p role="alert">{isPdf && words.pdf}</p>
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
