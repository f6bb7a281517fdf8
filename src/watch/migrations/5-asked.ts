import { note4 } from '../record/note-4';
import type { Migration } from '.';

/** With version 5 a record holds which questions were asked, and when: an older one does not know. */
export const asked: Migration = {
  to: 5,
  async migrate(raw) {
    return { ...note4.parse(raw), asked: [] };
  },
};
