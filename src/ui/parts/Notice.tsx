import type { ComponentChildren } from 'preact';

/** A message in the way of the work; `strong` when nothing else can be done first. */
export const Notice = ({
  title,
  text,
  strong = false,
  children,
}: {
  title?: string;
  text: string;
  strong?: boolean;
  children?: ComponentChildren;
}) => (
  <div class={strong ? 'notice notice-strong' : 'notice'} role={strong ? 'alert' : 'status'}>
    {title && <h2>{title}</h2>}
    <p>{text}</p>
    {children}
  </div>
);
