import { daySpan, spanWords } from '../span';
import { readingsWords, settledCodes } from './codes';
import { claimWords, daysBefore } from './dates';
import { practice } from './frame';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const dateNotInFuture = defineWritten({
  id: 'date-not-in-future',
  family: 'time',
  title: 'The dates lie before the listing',
  failureTitle: 'A date lies after the day on which the piece is offered',
  kinds: ['contradiction', 'doubt'],
  basis: 'What is offered has been made.',
  innocent: 'A digit of the code may be misread, or the listing has a slip.',
  settles: 'A sharper photo of the stamp.',
  source: practice,
  needs: { claims: ['made', 'bought'], decodings: true, photos: 'any', now: true, makerName: true },
  run(facts) {
    const today = daySpan(facts.now.slice(0, 10));
    const claims = [...facts.claims.made, ...facts.claims.bought].filter(({ span }) => daysBefore(today, span) > 0);
    const early = claims.map((claim): WrittenSpeech => {
      const statement = `The listing says ${claimWords(claim)}, after ${spanWords(today)}.`;
      return { kind: 'doubt', key: claim.id, statement, claims: [claim.id], asks: [commonAsks.madeDate] };
    });
    const settled = facts.makerName === null ? null : settledCodes(facts, facts.makerName);
    if (settled && 'cannotTell' in settled && early.length === 0) return settled;
    const codes = settled && 'codes' in settled ? settled.codes : [];
    const late = codes.flatMap(({ readings, words, hard, photos, decoding }): WrittenSpeech[] => {
      const spans = readings.flatMap(({ span }) => (span ? [span] : []));
      if (spans.length === 0 || spans.some((span) => daysBefore(today, span) === 0)) return [];
      const statement = `${sentence(words)}: ${readingsWords(readings)}, after ${spanWords(today)}.`;
      const kind = hard ? 'contradiction' : 'doubt';
      return [{ kind, key: decoding.id, statement, photos, asks: [commonAsks.stampPhoto] }];
    });
    return [...late, ...early];
  },
});
