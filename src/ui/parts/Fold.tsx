import type { ComponentChildren } from 'preact';

interface Props {
  /** Names the part, for whatever leads to it. */
  part: string;
  title: string;
  open?: boolean;
  class?: string;
  children: ComponentChildren;
}

/** A part of a screen behind its heading. What a buyer opened stays open while the case is read on. */
export const Fold = ({ part, title, open = false, class: name = '', children }: Props) => (
  <details class={`folded ${name}`} data-part={part} open={open} aria-labelledby={`${part}-title`}>
    <summary>
      <h2 id={`${part}-title`}>{title}</h2>
    </summary>
    {children}
  </details>
);

/** Opens a part and takes sight and keyboard to its heading; nothing where the screen has no such part. */
export function goToPart(room: ParentNode | null, part: string): void {
  const fold = room?.querySelector<HTMLDetailsElement>(`details[data-part="${part}"]`);
  if (!fold) return;
  fold.open = true;
  fold.querySelector('summary')?.focus();
  fold.scrollIntoView?.({ block: 'start' });
}
