import { note8 } from '../record/note-8';
import type { Migration } from '.';

/** With version 9 a record says when a photo was brought or taken out: of an older one nobody knows, and any change counts. */
export const sentChanges: Migration = {
  to: 9,
  async migrate(raw) {
    return { ...note8.parse(raw), sentChanges: [] };
  },
};
