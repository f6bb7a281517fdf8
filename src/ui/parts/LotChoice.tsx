import { type Case, type CaseLot, choosePiece, stampsPlaced } from '../../case';
import { kit, strings } from '../../words';
import { numberOf } from '../number-of';
import { useFocusKept } from '../use-focus-kept';
import type { ByHand } from './by-hand';

const words = strings.answer.lot;
/** More sentences of a description than these would bury the choice. */
const mostNamed = 4;

interface Props {
  kase: Case;
  lot: CaseLot;
  byHand?: ByHand | undefined;
}

/** Where several pieces are on offer: which one the case is of, chosen by the buyer, and what is held against none. */
export function LotChoice({ kase, lot, byHand }: Props) {
  const room = useFocusKept<HTMLElement>();
  const { pieces, chosen } = lot;
  const choose = ({ correct }: ByHand, piece: string | null) => correct(choosePiece(lot, piece));
  const notPlaced = kase.claims.filter(({ id }) => lot.notPlaced.includes(id)).map((claim) => kit.quote(claim.words));
  const named = [...new Set(notPlaced)].slice(0, mostNamed);
  return (
    <section class="lot" aria-labelledby="lot-title" ref={room}>
      <h2 id="lot-title">{words.title(pieces.length)}</h2>
      {pieces.length === 0 && <p>{words.unnamed}</p>}
      {byHand ? (
        <div class="row">
          {pieces.map((piece) => (
            <button key={piece} type="button" aria-pressed={piece === chosen} onClick={() => choose(byHand, piece)}>
              {piece}
            </button>
          ))}
          <button type="button" class="small" onClick={() => choose(byHand, null)}>
            {words.onePiece}
          </button>
        </div>
      ) : (
        chosen !== null && <p>{strings.byHand.piece(chosen)}</p>
      )}
      <p class="muted hint">
        {words.because(lot.words)} {chosen === null && pieces.length > 0 && words.none}
      </p>
      <p class="muted hint">
        {named.length > 0 && `${words.notPlaced(kit.list(named))} `}
        {words.price}
      </p>
      <Placed kase={kase} byHand={byHand} />
    </section>
  );
}

/** Of which stamps the buyer said whose they are; undone where it is said. */
function Placed({ kase, byHand }: Pick<Props, 'kase' | 'byHand'>) {
  return stampsPlaced(kase).map(({ correction, photoId, piece }) => {
    const said = strings.byHand.stampOn(numberOf(kase, photoId), piece);
    return (
      <p key={correction.id} class="by-hand">
        {said}{' '}
        {byHand && (
          <button
            type="button"
            class="small"
            aria-label={strings.byHand.undoNamed(said)}
            onClick={() => byHand.undo(correction.id)}
          >
            {strings.byHand.undo}
          </button>
        )}
      </p>
    );
  });
}
