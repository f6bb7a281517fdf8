import type { PhotoBytes } from '../../message/protocol';
import type { HeldPhoto } from './keep-photos';
import type { SessionPorts } from './session-ports';

export type Held = Readonly<Record<string, HeldPhoto>>;

/** The photos whose bytes are in this document, each at an address of its own; `changed` gets all addresses by photo id. */
export function holdPhotos(
  { keepFile, dropFile }: Pick<SessionPorts, 'keepFile' | 'dropFile'>,
  changed: (files: Record<string, string>) => void,
) {
  let held: Held = {};

  return {
    all: () => held,
    files: () => filesOf(held),
    has: (id: string) => held[id] !== undefined,
    /** Where a photo's bytes are; empty where they are not here. */
    fileOf: (id: string) => held[id]?.file ?? '',

    hold(id: string, bytes: PhotoBytes): void {
      held = { ...held, [id]: { bytes, file: keepFile(bytes) } };
      changed(filesOf(held));
    },

    letGo(id: string): void {
      const { [id]: gone, ...others } = held;
      if (gone) dropFile(gone.file);
      held = others;
      changed(filesOf(held));
    },

    /** Holds these and no others: another listing's, whose own change tells the addresses. */
    holdOnly(known: Held): void {
      const stay = new Set(Object.values(known).map(({ file }) => file));
      for (const { file } of Object.values(held)) if (!stay.has(file)) dropFile(file);
      held = known;
    },

    end(): void {
      for (const { file } of Object.values(held)) dropFile(file);
    },
  };
}
export type HeldPhotos = ReturnType<typeof holdPhotos>;

const filesOf = (held: Held): Record<string, string> =>
  Object.fromEntries(Object.entries(held).map(([id, { file }]) => [id, file]));
