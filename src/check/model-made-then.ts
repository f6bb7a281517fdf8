import { roomDays } from '../evidence';
import { periodSpan, spanWords } from '../span';
import { dateOf } from './dated';
import { daysApart } from './dates';
import { fromMakerFile, makerFileSource } from './frame';
import { namedModel } from './models';
import { askFact } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const modelMadeThen = defineWritten({
  id: 'model-made-then',
  family: 'time',
  title: 'The model was made at the date',
  failureTitle: 'The model was not made at the date',
  kinds: ['doubt', 'agreement'],
  basis: 'A model is made from its first to its last year.',
  innocent: 'The seller may use the name of a similar model, or the file’s years may be off.',
  settles: 'How the model is known, and a photo of the whole piece.',
  source: makerFileSource,
  needs: { maker: ['models'], claims: ['made', 'model'], listing: ['model', 'title'], decodings: true, photos: 'any' },
  run(facts) {
    const { maker, listing, claims } = facts;
    const named = namedModel(maker.models, { model: claims.model, fields: [listing.model, listing.title] });
    const period = named?.model.made ? periodSpan(named.model.made) : null;
    if (!named || !period) return { notApplicable: 'the listing names no model with known years' };
    const dated = dateOf(facts, maker.name);
    if (!dated) return { cannotTell: 'neither a code nor the listing gives a date' };
    const apart = Math.min(...dated.spans.map((span) => daysApart(span, period)));
    const source = fromMakerFile(maker.name, `years of ${named.model.name}`, named.model.source);
    const common = {
      claims: [...named.claims, ...dated.claims],
      photos: dated.photos,
      evidence: dated.evidence,
      source,
    };
    const years = `${maker.name} made the ${named.model.name} ${fromWords(spanWords(period))}`;
    const speech: WrittenSpeech | null =
      apart === 0
        ? { kind: 'agreement', statement: `${years}, and ${dated.words}.`, ...common }
        : apart > roomDays.makerPeriod
          ? {
              kind: 'doubt',
              statement: `${years}, but ${dated.words}.`,
              ...common,
              asks: [askFact('model', 'How do you know which model it is?')],
            }
          : null;
    return speech ? [speech] : [];
  },
});

const fromWords = (period: string) => (/^(from|up to)/.test(period) ? period : `from ${period}`);
