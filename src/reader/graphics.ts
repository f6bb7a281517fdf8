import { type FasterNets, loadNets, type NetFiles, type NetSession, type OnnxRuntime } from '../stamp';
import { inTime } from './in-time';

/** The little of WebGPU that is used: an adapter is asked for, looked at, and gives a device that can be lost. */
export interface GraphicsAdapter {
  info?: { isFallbackAdapter?: boolean };
  /** Where the standard had it before it moved to `info`. */
  isFallbackAdapter?: boolean;
  limits: Readonly<Record<string, unknown>>;
  features: { has(name: string): boolean };
  requestDevice(wish: object): Promise<GraphicsDevice>;
}
export interface GraphicsDevice {
  lost: Promise<{ reason?: string; message: string }>;
}
export interface Graphics {
  requestAdapter(wish?: object): Promise<GraphicsAdapter | null>;
}

/** What of this browser decides whether nets can run on its graphics card. */
export interface GraphicsHere {
  gpu: Graphics | undefined;
  /** WASM can wait for the card (JavaScript Promise Integration), which the packaged build needs. */
  suspends: boolean;
}

/** `real`: only a real card. `any`: a software one too, slower than plain WASM, which only the tests want. */
export type WantedAdapter = 'real' | 'any';

/**
 * The adapter to run on, or null: no WebGPU, a browser that cannot suspend WASM, no card, or one that is only
 * computed. Source of the flag: W3C WebGPU, `GPUAdapterInfo.isFallbackAdapter`.
 */
export async function chooseAdapter(
  { gpu, suspends }: GraphicsHere,
  wanted: WantedAdapter = 'real',
): Promise<GraphicsAdapter | null> {
  if (gpu === undefined || !suspends) return null;
  const adapter = await gpu.requestAdapter({ powerPreference: 'high-performance' }).catch(() => null);
  if (adapter === null) return null;
  const isSoftware = adapter.info?.isFallbackAdapter ?? adapter.isFallbackAdapter ?? false;
  return isSoftware && wanted === 'real' ? null : adapter;
}

/** A net's run that takes longer has hung the card. The first one compiles all its programs; a software card computes each. */
const patienceMs = { first: 120_000, later: { real: 20_000, any: 120_000 } };

/** Limits that the runtime's programs can use more of than the standard's least. */
const wideLimits = [
  'maxStorageBufferBindingSize',
  'maxBufferSize',
  'maxComputeWorkgroupStorageSize',
  'maxComputeInvocationsPerWorkgroup',
  'maxComputeWorkgroupSizeX',
  'maxComputeWorkgroupSizeY',
  'maxComputeWorkgroupSizeZ',
  'maxComputeWorkgroupsPerDimension',
];

/**
 * Opens both nets on the adapter with a runtime that knows WebGPU, and runs each once on an empty picture, which
 * compiles its programs while photos are still read without it. Rejects, in words, when something fails.
 */
export async function openOnAdapter(
  adapter: GraphicsAdapter,
  loadRuntime: () => Promise<OnnxRuntime>,
  files: NetFiles,
  wanted: WantedAdapter = 'real',
): Promise<FasterNets> {
  const limits = wideLimits.filter((name) => adapter.limits[name] !== undefined);
  const features = ['subgroups'].filter((name) => adapter.features.has(name));
  const device = await adapter.requestDevice({
    requiredLimits: Object.fromEntries(limits.map((name) => [name, adapter.limits[name]])),
    requiredFeatures: features,
  });
  const loaded = await loadNets(await loadRuntime(), files, [{ name: 'webgpu', device }]);
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.problem));
  const { card, finder, recogniser } = loaded.value;
  await compile(finder, 2 * card.finder.multiple, 2 * card.finder.multiple);
  await compile(recogniser, card.recogniser.height, 2 * card.recogniser.narrowest);
  return {
    finder: withPatience(finder, patienceMs.later[wanted]),
    recogniser: withPatience(recogniser, patienceMs.later[wanted]),
    lost: device.lost.then(({ message }) => `the graphics device was lost: ${message}`),
  };
}

const compile = (net: NetSession, height: number, width: number): Promise<unknown> =>
  withPatience(net, patienceMs.first).run(new Float32Array(height * width), [1, 1, height, width]);

function withPatience(session: NetSession, patience: number): NetSession {
  return {
    run: (input, shape) => inTime(patience, session.run(input, shape), 'the graphics card did not answer in time'),
  };
}
