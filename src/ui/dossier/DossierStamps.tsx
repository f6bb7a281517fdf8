import type { Dossier, DossierStamp } from '../../watch';
import { chosenLanguage, sayReadingReason, strings } from '../../words';
import { ReadingTable } from '../parts/ReadingTable';
import { Unexplained } from '../parts/Unexplained';

const words = strings.stamp;
/** The dossier keeps what the panel cuts short. */
const mostTold = 12;

/** Every code of the case: where it was seen, its pictures, and each way to read it slot by slot. */
export const DossierStamps = ({ dossier: { read, unclear, kase } }: { dossier: Dossier }) => (
  <section aria-labelledby="dossier-stamps">
    <h2 id="dossier-stamps">{strings.dossier.codes}</h2>
    {read.length + unclear.length === 0 && <p class="muted">{kase.photos.length === 0 ? words.waiting : words.none}</p>}
    {read.map((stamp) => (
      <Read key={stamp.decoding.id} stamp={stamp} />
    ))}
    {unclear.length > 0 && (
      <section aria-labelledby="dossier-unclear">
        <h3 id="dossier-unclear">{strings.dossier.unclearTitle}</h3>
        <ul class="dossier-unclear">
          {unclear.map((stamp) => (
            <Unclear key={stamp.decoding.id} stamp={stamp} />
          ))}
        </ul>
      </section>
    )}
    {kase.maker !== null && (
      <p class="muted">
        {strings.makerFile(kase.maker)}
        {kase.makerInvented && ` ${strings.demoMaker}`}
      </p>
    )}
  </section>
);

function Read({ stamp }: { stamp: DossierStamp }) {
  const { decoding } = stamp;
  const { readings } = decoding;
  return (
    <article class="decoding">
      <h3>
        <span class="code">{readings[0]?.text ?? decoding.code}</span> <span class="muted">{seenWords(stamp)}</span>
      </h3>
      <Pictures stamp={stamp} />
      {readings.map((reading) => (
        <div key={`${reading.system.id} ${reading.text}`} class="dossier-reading">
          <ReadingTable reading={reading} />
          {readings.length > 1 && <p class="muted">{strings.dossier.chance(words.share(reading.probability))}</p>}
          <ul class="dossier-reasons muted">
            {reading.reasons.map((reason) => {
              const said = sayReadingReason(reason, chosenLanguage());
              return <li key={said}>{said}</li>;
            })}
          </ul>
        </div>
      ))}
      <Unexplained decoding={decoding} most={mostTold} />
    </article>
  );
}

/** What stayed uncertain is no reading: its picture and the few texts that it may be, for an eye to judge. */
function Unclear({ stamp }: { stamp: DossierStamp }) {
  const { readings, code } = stamp.decoding;
  const texts = readings.slice(0, 3).map(({ text, probability }) => `${text} (${words.share(probability)})`);
  const guess = texts.length > 0 ? texts.join(', ') : code;
  return (
    <li>
      <Pictures stamp={stamp} />
      <span class="muted">{seenWords(stamp)}</span>
      {guess === '' ? null : (
        <>
          {' '}
          {words.candidates} <span class="code">{guess}</span>
        </>
      )}
    </li>
  );
}

const Pictures = ({ stamp: { pictures } }: { stamp: DossierStamp }) => (
  <>
    {pictures.map(({ photo, picture }) => (
      <img key={picture} class="stamp-crop" src={picture} alt={words.pictureOf(photo)} />
    ))}
  </>
);

const seenWords = ({ seenIn, pictures }: DossierStamp): string => {
  const places = seenIn.map((place) => {
    if (place.kind === 'photo') return words.inPhoto(place.photo);
    return place.kind === 'listing' ? words.inListing : words.typed;
  });
  const unseen = seenIn.some(({ kind }) => kind === 'photo') && pictures.length === 0;
  return [...new Set(places), ...(unseen ? [strings.dossier.noPicture] : [])].join(' · ');
};
