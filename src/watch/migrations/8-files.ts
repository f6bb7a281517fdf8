import { note7 } from '../record/note-7';
import type { Migration } from '.';

/** With version 8 a look names files of its photos: of an older one none was kept. */
export const files: Migration = {
  to: 8,
  async migrate(raw) {
    const record = note7.parse(raw);
    return { ...record, looks: record.looks.map((look) => ({ ...look, files: [] })) };
  },
};
