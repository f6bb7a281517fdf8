import { resolve } from 'node:path';
import { loadShippedNets } from '../../src/cli/engines';
import { openPhotoFile } from '../../src/cli/photo-file';
import { modelCardSchema, type NetSession, readStamp, stampNets } from '../../src/stamp';
import { benchMaker } from './stamp/bench-maker';
import { judge, reliability, share } from './stamp/judge';
import { type JudgedPhoto, rates, saidOf } from './stamp/rows';
import { photosOf } from './stamp/validation';

/** What is tried beside the card's own: one value changed at a time. */
const tried = {
  temperature: [1, 1.1, 1.3],
  alike: [0.01, 0.04],
  least: [0.75],
};
const now = '2026-11-25';

/** The same input gives the same answer: a photo is looked at once, whatever number of cards read it. */
function remembering(net: NetSession): NetSession & { forget(): void } {
  let known: { input: Float32Array; answer: ReturnType<NetSession['run']> }[] = [];
  const same = (a: Float32Array, b: Float32Array) => a.length === b.length && a.every((value, at) => value === b[at]);
  return {
    forget: () => {
      known = [];
    },
    run(input, shape) {
      const seen = known.find((one) => same(one.input, input));
      if (seen !== undefined) return seen.answer;
      const answer = net.run(input, shape);
      known.push({ input, answer });
      return answer;
    },
  };
}

/** Expected calibration error, and the log loss (natural logarithm, no reading below one in a thousand). */
function calibration(judged: readonly JudgedPhoto[]): Record<string, string> {
  const said = saidOf(judged);
  const losses = said.map(({ probability, right }) => -Math.log(Math.max(1e-3, right ? probability : 1 - probability)));
  const loss = losses.reduce((sum, one) => sum + one, 0) / Math.max(1, losses.length);
  return { 'calibration error': share(reliability(said).error, 1), 'log loss': loss.toFixed(4) };
}

/**
 * How the model card's settings fare on photographs that no figure is taken from, a folder of `make_photos.py` named by
 * STAMP_SETTINGS_PHOTOS: exact, wrong but accepted, and calibration, for the card's own values and for others.
 */
export async function bench(): Promise<void> {
  const folder = process.env.STAMP_SETTINGS_PHOTOS;
  if (folder === undefined) {
    console.log('skipped: STAMP_SETTINGS_PHOTOS names no folder (the README of the training says how to draw one)');
    return;
  }
  const loaded = await loadShippedNets();
  if (!loaded.ok) throw new Error(loaded.problem.code);
  const { card } = loaded.value;
  const finder = remembering(loaded.value.finder);
  const recogniser = remembering(loaded.value.recogniser);
  const cards = [
    { name: 'as shipped', card },
    ...tried.temperature.map((temperature) => ({
      name: `temperature ${temperature}`,
      card: { ...card, temperature },
    })),
    ...tried.alike.map((alike) => ({
      name: `alike ${alike}`,
      card: { ...card, recogniser: { ...card.recogniser, alike } },
    })),
    ...tried.least.map((least) => ({
      name: `least ${least}`,
      card: { ...card, finder: { ...card.finder, least } },
    })),
  ].map(({ name, card: changed }) => ({
    name,
    nets: stampNets(modelCardSchema.parse(changed), finder, recogniser),
    judged: [] as JudgedPhoto[],
  }));
  const own = benchMaker();
  for (const photo of photosOf(resolve(folder))) {
    const opened = await openPhotoFile(photo.path);
    if (!opened.ok) throw new Error(`${photo.path}: ${opened.problem.code}`);
    for (const { nets, judged } of cards) {
      const read = await readStamp(opened.value.image, 'p1', { net: nets, print: null });
      const book = { makers: [own], maker: own.maker, now };
      judged.push({ photo, result: judge(read, photo.code, nets.acceptance.stampScore, book) });
    }
    finder.forget();
    recogniser.forget();
  }
  console.table(
    cards.flatMap(({ name, judged }) =>
      (['withSystems', 'named', 'free'] as const).map((kind) => ({
        ...rates(name, judged, kind),
        ...(kind === 'withSystems' ? calibration(judged) : {}),
      })),
    ),
  );
}
