import { note5 } from '../record/note-5';
import type { Migration } from '.';

/** With version 6 a record says when the piece was made where that is settled otherwise: an older one does not know. */
export const dated: Migration = {
  to: 6,
  async migrate(raw) {
    return { ...note5.parse(raw), dated: null };
  },
};
