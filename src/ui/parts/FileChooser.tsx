import { useRef } from 'preact/hooks';

/** What an image or a document may be that is read as a photo. */
export const photoFiles = 'image/*,application/pdf';

interface Props {
  /** What the button says. */
  label: string;
  accept: string;
  multiple?: boolean;
  onFiles: (files: File[]) => void;
}

/** A button that lets files be chosen; the browser's own field stays out of sight. */
export function FileChooser({ label, accept, multiple = false, onFiles }: Props) {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => chooser.current?.click()}>
        {label}
      </button>
      <input
        ref={chooser}
        type="file"
        multiple={multiple}
        accept={accept}
        class="visually-hidden"
        tabIndex={-1}
        aria-label={label}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same file may be chosen again.
          currentTarget.value = '';
          onFiles(files);
        }}
      />
    </>
  );
}
