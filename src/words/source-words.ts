import type { MakerPart, Source } from '../source';

type PartOf<K extends MakerPart['of'], P = MakerPart> = P extends MakerPart
  ? K extends P['of']
    ? Omit<P, 'of'>
    : never
  : never;

/** Where a rule or a figure comes from, in one language; documents name themselves. */
export interface SourceWords {
  /** Behind a document's name. */
  memory: string;
  practice: string;
  /** `maker` null: whichever file is used. */
  makerFile: (maker: string | null, invented: boolean) => string;
  parts: { [K in MakerPart['of']]: (part: PartOf<K>) => string };
  /** Behind the part, the sources that the file gives for it. */
  itsSource: (sources: string) => string;
  listing: Record<Extract<Source, { kind: 'listing' }>['field'], string>;
  photo: string;
  user: Record<Extract<Source, { kind: 'user' }>['as'], string>;
}
