import { useEffect, useRef, useState } from 'preact/hooks';
import { type FieldPath, pathWords } from '../../maker';

/** Marks a control, or what holds a field's controls, with the field's place in the file. */
export const placeOf = (path: FieldPath) => ({ 'data-place': pathWords(path) });

const control = 'input, select, textarea, button';

/** The place around a place: `plants[0].used[1]`, `plants[0].used`, `plants[0]`, `plants`. Empty around the last. */
const around = (place: string): string => /^(.*)(?:\[\d+\]|\.[^.[\]]*)$/s.exec(place)?.[1] ?? '';

/** What the screen shows of a place or, where it has no field of its own, of the nearest place around it. */
function shownAt(editor: HTMLElement, where: string): HTMLElement | null {
  const marked = [...editor.querySelectorAll<HTMLElement>('[data-place]')];
  for (let place = where; place !== ''; place = around(place)) {
    const found = marked.find(({ dataset }) => dataset.place === place);
    if (found) return found;
  }
  return null;
}

/** Whether some field, or what holds it, can be gone to: not so for what has no place on the screen at all. */
export const hasField = (where: string): boolean =>
  /^(?:maker|aliases|sources|authors|licence|stamped|note|codeSystems|plants|plantsComplete|carriers|marks|parts|construction|models|numbers|typefaces|prices|trade)\b/.test(
    where,
  );

/** Goes to the field of a problem. A slot whose fields are folded away is opened first, and gone to when it is drawn. */
export function useGoToField() {
  const editor = useRef<HTMLDivElement>(null);
  const [wanted, setWanted] = useState<{ where: string } | null>(null);
  useEffect(() => {
    const shown = wanted && editor.current && shownAt(editor.current, wanted.where);
    if (!shown) return;
    const target = shown.matches(control) ? shown : shown.querySelector<HTMLElement>(control);
    // The middle: what sticks to the window's top would lie over a field that is only just in view.
    shown.scrollIntoView?.({ block: 'center' });
    target?.focus({ preventScroll: true });
  }, [wanted]);
  const goTo = (where: string) => {
    const shown = editor.current && shownAt(editor.current, where);
    if (shown?.matches('button[aria-pressed=false]')) shown.click();
    setWanted({ where });
  };
  return { editor, goTo };
}
