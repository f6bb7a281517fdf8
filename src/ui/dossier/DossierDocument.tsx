import { answerOf } from '../../case';
import type { Dossier } from '../../watch';
import { chosenLanguage, sayQuestion, strings } from '../../words';
import { Answer } from '../parts/Answer';
import { Cautions } from '../parts/Cautions';
import { Claims } from '../parts/Claims';
import { Corrections } from '../parts/Corrections';
import { Head } from '../parts/Head';
import { LotChoice } from '../parts/LotChoice';
import { Marks } from '../parts/Marks';
import { PhotoNotes } from '../parts/PhotoNotes';
import { pictureOfLine } from '../pictures';
import { SentPhotos } from '../sent/SentPhotos';
import { TimeAxis } from '../TimeAxis';
import { DossierAside } from './DossierAside';
import { DossierFindings } from './DossierFindings';
import { DossierMeasured } from './DossierMeasured';
import { DossierStamps } from './DossierStamps';
import { NotLookedAt } from './NotLookedAt';
import { OwnRecord, WhatWasOffered } from './Particulars';

/**
 * One saved case as one document, for the buyer's records and for whoever judges the piece itself: the answer first, then
 * what it rests on, as everywhere. Nothing in it folds or opens: what is on the screen is what stands on paper and in the
 * saved file.
 */
export const DossierDocument = ({ dossier }: { dossier: Dossier }) => {
  const { kase } = dossier;
  return (
    <article class="dossier" data-case={dossier.id}>
      <header class="dossier-header">
        {dossier.face && <img class="dossier-face" src={dossier.face} alt={strings.dossier.face} />}
        <p class="muted">
          {strings.product} · {strings.dossier.kind}
        </p>
        <h1>{dossier.title}</h1>
      </header>
      <div class="case-room">
        <div class="case">
          <div class="case-answer">
            <Answer kase={kase} answer={answerOf(kase)} pictureOfLine={pictureOfLine(dossier.pictures)} whole />
            {kase.lot && <LotChoice kase={kase} lot={kase.lot} />}
            <Head kase={kase} most={3} />
            <Cautions />
            <WhatWasOffered dossier={dossier} />
            <section aria-labelledby="claims-title">
              <h2 id="claims-title">{strings.claims.title}</h2>
              <Claims claims={kase.claims} />
            </section>
            <Corrections kase={kase} />
            <OwnRecord dossier={dossier} />
          </div>
          <div class="case-evidence">
            <DossierFindings groups={dossier.findings} />
            <DossierAside kase={kase} />
            <NotLookedAt rest={dossier.notLookedAt} photoCount={kase.listing.photos.length} />
            <DossierQuestions questions={dossier.questions} />
            <DossierStamps dossier={dossier} />
            <DossierMeasured measured={dossier.measured} />
            <DossierSentPhotos sent={dossier.sent} />
            <PhotoNotes kase={kase} />
            {kase.reasoning && <TimeAxis evidence={kase.evidence} reasoning={kase.reasoning} tableShown />}
            <Marks kase={kase} />
          </div>
        </div>
      </div>
    </article>
  );
};

const DossierSentPhotos = ({ sent }: Pick<Dossier, 'sent'>) =>
  sent.length === 0 ? null : (
    <section aria-labelledby="dossier-sent">
      <h2 id="dossier-sent">{strings.sent.title}</h2>
      <SentPhotos sent={sent} />
    </section>
  );

const DossierQuestions = ({ questions }: Pick<Dossier, 'questions'>) =>
  questions.length === 0 ? null : (
    <section aria-labelledby="dossier-questions">
      <h2 id="dossier-questions">{strings.questions.title}</h2>
      <ol class="questions">
        {questions.map(({ question, settles }) => (
          <li key={question.id}>
            {sayQuestion(question, chosenLanguage())}{' '}
            <span class="muted">
              {[
                question.wants === 'photo' ? strings.questions.photo : '',
                settles.length > 0 ? strings.dossier.settles(settles) : '',
              ]
                .filter(Boolean)
                .join(' · ')}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
