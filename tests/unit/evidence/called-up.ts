import type { Claim } from '../../../src/claim/types';
import { fromMaker } from '../../../src/evidence/from-maker';
import type { Construction, MakerFile } from '../../../src/maker/types';
import type { Span } from '../../../src/span';
import { claim } from '../check/sample';
import { ondrasse } from './samples';

/** Files of construction, words that call up what stands in them, and what is told of it. */
export type Row = Partial<Construction> & Pick<Construction, 'is'>;
export const file = (construction: Row[], over: Partial<MakerFile> = {}): MakerFile => ({
  ...ondrasse,
  construction: construction.map((one) => ({ part: 'lining', used: ['1990', '1995'], strength: 'hard', ...one })),
  ...over,
});
export const model = (name: string, id = 'mo') => claim('model', name, { model: name }, id);
export const years = (spans: readonly Span[]) =>
  spans.map(({ from, to, about }) => `${from?.slice(0, 4) ?? ''}-${to?.slice(0, 4) ?? ''}${about ? '~' : ''}`).join();
/** Each as "id kind years strength". */
export const told = (claims: Claim[], maker: MakerFile | null, words?: string[]) =>
  fromMaker(claims, maker, words).map(({ id, says, spans, strength }) =>
    [id, says.kind, years(spans), strength].join(' '),
  );
