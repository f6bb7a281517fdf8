import { useState } from 'preact/hooks';
import { StampSection } from '../parts/StampSection';
import { TypeCode } from '../parts/TypeCode';
import { MakerChoice } from './MakerChoice';
import { useLoose } from './use-loose';

/** A code by itself, without listing or photo: what its form allows, and what the files that are here say of it. */
export function ReadCode() {
  const [state, { session, under }] = useLoose();
  const [maker, setMaker] = useState('');
  const { case: kase } = state;
  if (!kase) return null;
  return (
    <>
      <MakerChoice
        maker={maker}
        onChoose={(name) => {
          setMaker(name);
          under(name);
        }}
      />
      <TypeCode
        onType={(code) => {
          for (const { id } of state.corrections) session.undo(id);
          session.typeCode(null, code);
        }}
      />
      {kase.decodings.length > 0 && <StampSection kase={kase} pictureOfLine={() => null} />}
    </>
  );
}
