import { type Case, photoNotes } from '../../case';
import { kit, strings } from '../../words';
import { numberOf } from '../number-of';

const words = strings.photoNotes;

/** What is noticed of how the photos were made, each with an ordinary reason: facts, and nothing that speaks against a piece. */
export function PhotoNotes({ kase }: { kase: Case }) {
  const notes = photoNotes(kase);
  if (notes === null) return null;
  const { sizes, margins, evenGrounds, cameras, days } = notes;
  const named = (ids: readonly string[]) => strings.photos.numbered(ids.map((id) => numberOf(kase, id)));
  return (
    <section class="photo-notes" aria-labelledby="photo-notes-title">
      <h3 id="photo-notes-title">{words.title}</h3>
      <Noticed why={words.sizesWhy}>
        {sizes.map(({ of: [longer, shorter], photos }) =>
          words.size(named(photos), kit.number(longer), kit.number(shorter)),
        )}
      </Noticed>
      <Noticed why={words.marginsWhy}>{margins.length > 0 ? [words.margins(named(margins))] : []}</Noticed>
      <Noticed why={words.evenGroundsWhy}>
        {evenGrounds.length > 0 ? [words.evenGrounds(named(evenGrounds))] : []}
      </Noticed>
      <Noticed why={words.fileWhy}>
        {[
          ...days.map(({ of, photos }) => words.taken(named(photos), kit.day(of))),
          ...cameras.map(({ of, photos }) => words.camera(named(photos), of)),
        ]}
      </Noticed>
    </section>
  );
}

const Noticed = ({ children, why }: { children: readonly string[]; why: string }) =>
  children.length === 0 ? null : (
    <>
      <ul>
        {children.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <p class="muted hint">
        {strings.findings.innocent}: {why}
      </p>
    </>
  );
