import type { ComponentChildren } from 'preact';
import type { Dossier } from '../../watch';
import { strings } from '../../words';
import { priceWords } from '../claim-words';
import { dayWords } from '../day-words';

const words = strings.dossier;

/** Which listing this is about, and when it was read. Its price stands among its claims. */
export const WhatWasOffered = ({ dossier }: { dossier: Dossier }) => (
  <section aria-labelledby="dossier-listing">
    <h2 id="dossier-listing">{words.listing}</h2>
    <dl class="dossier-facts">
      <Fact name={words.address}>
        {dossier.link ? (
          <a href={dossier.link} target="_blank" rel="noreferrer noopener">
            {dossier.address}
          </a>
        ) : (
          dossier.address
        )}
      </Fact>
      {dossier.seller && <Fact name={words.seller}>{dossier.seller}</Fact>}
      <Fact name={words.photos}>{dossier.photoCount}</Fact>
      <Fact name={words.read}>{dayWords(dossier.readAt)}</Fact>
      {dayWords(dossier.judgedAt) === dayWords(dossier.readAt) ? null : (
        <Fact name={words.judged}>{dayWords(dossier.judgedAt)}</Fact>
      )}
    </dl>
  </section>
);

/** What the buyer noted and did: as the watch list keeps it. */
export const OwnRecord = ({ dossier }: { dossier: Dossier }) => (
  <section aria-labelledby="dossier-record">
    <h2 id="dossier-record">{words.history}</h2>
    <dl class="dossier-facts">
      <Fact name={words.status}>{strings.watch.statuses[dossier.status]}</Fact>
      {dossier.lookedBefore && (
        <Fact name={words.before}>
          {[
            dayWords(dossier.lookedBefore.readAt),
            dossier.lookedBefore.price && words.priceThen(priceWords(dossier.lookedBefore.price)),
          ]
            .filter(Boolean)
            .join(', ')}
        </Fact>
      )}
      <Fact name={words.saved}>{dayWords(dossier.savedAt)}</Fact>
      <Fact name={words.changed}>{dayWords(dossier.changedAt)}</Fact>
      <Fact name={strings.watch.note}>
        {dossier.note === '' ? (
          <span class="muted">{words.noNote}</span>
        ) : (
          <span class="dossier-note">{dossier.note}</span>
        )}
      </Fact>
      {dossier.otherNotes.map((other) => (
        <Fact name={strings.watch.otherNoteFrom[other.from](dayWords(other.at))} key={`${other.at} ${other.note}`}>
          {other.note !== '' && <p class="dossier-other-note">{other.note}</p>}
          {other.status && strings.watch.otherStatus(strings.watch.statuses[other.status])}
        </Fact>
      ))}
    </dl>
  </section>
);

const Fact = ({ name, children }: { name: string; children: ComponentChildren }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);
