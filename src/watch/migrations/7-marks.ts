import { note6 } from '../record/note-6';
import type { Migration } from '.';

/** With version 7 a record may hold marks on photos: an older one has none. */
export const marks: Migration = {
  to: 7,
  async migrate(raw) {
    return note6.parse(raw);
  },
};
