import { type ModelCard, modelCardSchema } from '../../src/stamp';

/** A model card with sides small enough for nets made by hand; `alphabet` is what its lattices spell. */
export const smallModelCard = (alphabet: string, longest: number): ModelCard =>
  modelCardSchema.parse({
    date: '2026-01-01',
    alphabet,
    temperature: 1,
    acceptance: { stampScore: 0.5 },
    finder: {
      file: 'f',
      input: 'photo',
      output: 'map',
      longest,
      multiple: 32,
      step: 4,
      unit: 8,
      core: 0.5,
      smallest: 3,
    },
    recogniser: {
      file: 'r',
      input: 'line',
      output: 'logits',
      height: 48,
      beside: 0.5,
      above: 0.25,
      narrowest: 32,
      widest: 1152,
      multiple: 4,
    },
  });
