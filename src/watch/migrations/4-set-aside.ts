import { note3 } from '../record/note-3';
import type { Migration } from '.';

/** With version 4 a buyer can set findings aside and choose among several pieces: an older record holds neither. */
export const setAside: Migration = {
  to: 4,
  async migrate(raw) {
    const { shown, ...record } = note3.parse(raw);
    return { ...record, shown: { ...shown, head: { ...shown.head, aside: false } } };
  },
};
