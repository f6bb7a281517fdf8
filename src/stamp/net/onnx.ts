import { fail, type ProblemData, problem, type Result, reported, succeed } from '../../problem';
import { type ModelCard, modelCardSchema } from './card';
import type { NetPair } from './faster';
import type { NetSession } from './nets';

/** The little of onnxruntime-web (or -node) that is used; whoever opens the nets brings the module. */
export interface OnnxRuntime {
  InferenceSession: {
    create(model: Uint8Array, options?: object): Promise<OnnxSession>;
  };
  Tensor: new (type: 'float32', data: Float32Array, shape: readonly number[]) => unknown;
}
interface OnnxSession {
  run(inputs: Record<string, never>): Promise<Record<string, unknown>>;
}

/** The files of the nets as they were read: the model card as text, the nets as bytes. */
export interface NetFiles {
  card: string;
  read(name: string): Promise<Uint8Array>;
}

/** Both nets with the card that says how to use them. */
export interface LoadedNets extends NetPair {
  card: ModelCard;
}

/**
 * Loads both nets. A card or a net that does not fit is a problem, and reading goes on without nets. `providers` are the
 * runtime's own names of where to run, best first; the runtime chooses when there are none.
 */
export async function loadNets(
  runtime: OnnxRuntime,
  files: NetFiles,
  providers?: readonly unknown[],
): Promise<Result<LoadedNets>> {
  let written: unknown;
  try {
    written = JSON.parse(files.card);
  } catch {
    return broken('card-not-json', '');
  }
  const card = modelCardSchema.safeParse(written);
  if (!card.success) return broken('card-unfit', card.error.issues[0]?.message ?? '');
  const open = async ({ file, input, output }: { file: string; input: string; output: string }) =>
    openSession(runtime, await files.read(file), input, output, providers);
  try {
    // One after the other: both at once only means that both are in memory twice at the same time.
    const finder = await open(card.data.finder);
    const recogniser = await open(card.data.recogniser);
    return succeed({ card: card.data, finder, recogniser });
  } catch (error) {
    return broken('not-started', reported(error).said);
  }
}

async function openSession(
  runtime: OnnxRuntime,
  bytes: Uint8Array,
  input: string,
  output: string,
  providers: readonly unknown[] | undefined,
): Promise<NetSession> {
  const session = await runtime.InferenceSession.create(bytes, {
    // Higher levels double the time to start and gain nothing that can be measured on nets this small.
    graphOptimizationLevel: 'basic',
    logSeverityLevel: 3,
    ...(providers === undefined ? {} : { executionProviders: providers }),
  });
  return {
    async run(data, shape) {
      const tensor = new runtime.Tensor('float32', data, shape) as never;
      const answer = (await session.run({ [input]: tensor } as Record<string, never>))[output] as {
        data: Float32Array;
        dims: readonly number[];
      };
      return { data: answer.data, shape: answer.dims };
    },
  };
}

const broken = (why: ProblemData['nets-not-loaded']['why'], said: string): Result<never> =>
  fail(problem('nets-not-loaded', 'stamp nets', { why, said }));
