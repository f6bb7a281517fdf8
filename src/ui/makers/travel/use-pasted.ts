import { useEffect, useRef } from 'preact/hooks';

interface Takes {
  takeText: (text: string) => void;
  takeFiles: (files: Iterable<File>) => void;
}

/** Takes files and text that are pasted anywhere on the page, unless into a field, which takes them itself. */
export function usePasted(takes: Takes): void {
  const latest = useRef(takes);
  latest.current = takes;
  useEffect(() => {
    const pasted = (event: ClipboardEvent) => {
      const isField = event.target instanceof Element && event.target.closest('input, textarea, [contenteditable]');
      const files = [...(event.clipboardData?.files ?? [])];
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (isField || (files.length === 0 && text.trim() === '')) return;
      event.preventDefault();
      if (files.length > 0) latest.current.takeFiles(files);
      else latest.current.takeText(text);
    };
    document.addEventListener('paste', pasted);
    return () => document.removeEventListener('paste', pasted);
  }, []);
}
