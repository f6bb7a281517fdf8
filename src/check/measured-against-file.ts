import * as z from 'zod';
import { type Evidence, fileNumberSchema, isSaying, measuredNumberSchema } from '../evidence';
import { askFor } from './asks';
import { defineCheck, makerFileSource } from './frame';
import { type PairOf, pairKind } from './pairs';
import { because } from './reasons';
import { photoNumber } from './types';

export const measuredAgainstFile = defineCheck({
  id: 'measured-against-file',
  family: 'construction',
  kinds: ['doubt', 'agreement'],
  source: makerFileSource,
  data: z.strictObject({
    photo: photoNumber,
    mark: measuredNumberSchema.shape.mark,
    maker: z.string(),
    /** As the file names it. */
    part: z.string(),
    is: measuredNumberSchema.shape.is,
    /** What the file says of it; of several numbers that may hold, all. */
    file: z.array(fileNumberSchema.shape.is).min(1),
  }),
  needs: { onePiece: true, maker: ['numbers'], evidence: true, pairs: true },
  run({ maker, evidence, pairOf, photoNumber: numberOf }) {
    const measured = evidence.filter(isMeasured);
    if (measured.length === 0) return { cannotTell: because('no-number-measured', { maker: maker.name }) };
    return measured.flatMap(({ id, from, says }) => {
      const { mark, part, is } = says;
      const found = heldAgainst(id, evidence, pairOf);
      // Any of them may be the one that holds: where one agrees, nothing is off.
      const agrees = found.filter(({ kind }) => kind === 'agreement');
      const told = agrees.length > 0 ? agrees : found;
      const [first] = told;
      if (!first) return [];
      const sources = [...new Set(told.flatMap(({ piece: { source } }) => sourcesOf(source)))];
      return [
        {
          kind: agrees.length > 0 ? 'agreement' : 'doubt',
          key: from.id,
          data: {
            photo: numberOf(says.photo),
            mark,
            maker: maker.name,
            part,
            is,
            file: told.map(({ piece }) => piece.says.is),
          },
          photos: [says.photo],
          evidence: [id, ...told.map(({ piece }) => piece.id)],
          source: first.piece.source.kind === 'maker-file' ? { ...first.piece.source, sources } : first.piece.source,
          asks: [askFor('measured-part', { part })],
        } as const,
      ];
    });
  },
});

const isMeasured = isSaying('measured-number');
const isOfFile = isSaying('file-number');

const sourcesOf = (source: Evidence['source']): string[] => (source.kind === 'maker-file' ? source.sources : []);

/** The numbers of the file that stand against one measure, and how they do. */
const heldAgainst = (id: string, evidence: readonly Evidence[], pairOf: PairOf) =>
  evidence.filter(isOfFile).flatMap((piece) => {
    const kind = pairKind(pairOf('measured-number', id, piece.id));
    return kind ? [{ kind, piece }] : [];
  });
