interface Props {
  /** Null where the title says which field it is. */
  label: string | null;
  said: string;
}

/** What one of two files says of a field, on a line of its own where the field is named. */
export const FieldSaid = ({ label, said }: Props) => (
  <span class={label === null ? undefined : 'conflict-part'}>
    {label !== null && <span class="muted">{label}: </span>}
    {said}{' '}
  </span>
);
