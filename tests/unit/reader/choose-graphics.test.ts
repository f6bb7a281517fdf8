import { describe, expect, it } from 'vitest';
import { chooseAdapter, type GraphicsAdapter, openOnAdapter } from '../../../src/reader/graphics';
import type { OnnxRuntime } from '../../../src/stamp';
import { smallModelCard } from '../small-model-card';

const adapterWith = (change: Partial<GraphicsAdapter>): GraphicsAdapter => ({
  limits: { maxBufferSize: 1_000, maxTextureDimension1D: 8 },
  features: { has: () => false },
  requestDevice: async () => ({ lost: new Promise(() => {}) }),
  ...change,
});
const gpuWith = (adapter: GraphicsAdapter | null) => ({ requestAdapter: async () => adapter });
const real = adapterWith({ info: { isFallbackAdapter: false } });
const software = adapterWith({ info: { isFallbackAdapter: true } });
const oldSoftware = adapterWith({ isFallbackAdapter: true });

describe('the graphics card that the nets may run on', () => {
  it('is a real one, in a browser whose WASM can wait for it', async () => {
    expect(await chooseAdapter({ gpu: gpuWith(real), suspends: true })).toBe(real);
    expect(await chooseAdapter({ gpu: gpuWith(adapterWith({})), suspends: true })).not.toBeNull();
  });

  it.each([
    ['without WebGPU', { gpu: undefined, suspends: true }],
    ['whose WASM cannot wait', { gpu: gpuWith(real), suspends: false }],
    ['without a card', { gpu: gpuWith(null), suspends: true }],
    ['with a software card', { gpu: gpuWith(software), suspends: true }],
    ['with a software card, said the old way', { gpu: gpuWith(oldSoftware), suspends: true }],
    ['that refuses', { gpu: { requestAdapter: () => Promise.reject(new Error('blocked')) }, suspends: true }],
  ])('is none in a browser %s', async (_, here) => {
    expect(await chooseAdapter(here)).toBeNull();
  });

  it('may be a software one where a test asks for it', async () => {
    expect(await chooseAdapter({ gpu: gpuWith(software), suspends: true }, 'any')).toBe(software);
    expect(await chooseAdapter({ gpu: gpuWith(null), suspends: true }, 'any')).toBeNull();
  });
});

const files = { card: JSON.stringify(smallModelCard('AB', 64)), read: async () => new Uint8Array(4) };

describe('opening the nets on a card', () => {
  it('asks for what the card can do, runs both nets once to compile them, and tells when the device is lost', async () => {
    const wishes: object[] = [];
    const options: { executionProviders?: unknown }[] = [];
    const shapes: (readonly number[])[] = [];
    const device = { lost: Promise.resolve({ message: 'driver reset' }) };
    const adapter = adapterWith({
      requestDevice: async (wish) => {
        wishes.push(wish);
        return device;
      },
    });
    const runtime: OnnxRuntime = {
      InferenceSession: {
        create: async (_model, option) => {
          options.push(option as object);
          return { run: async () => ({ map: { data: [], dims: [] }, logits: { data: [], dims: [] } }) };
        },
      },
      Tensor: class {
        constructor(_type: string, _data: Float32Array, shape: readonly number[]) {
          shapes.push(shape);
        }
      },
    };
    const nets = await openOnAdapter(adapter, async () => runtime, files);
    expect(wishes).toEqual([{ requiredLimits: { maxBufferSize: 1_000 }, requiredFeatures: [] }]);
    expect(options.map(({ executionProviders }) => executionProviders)).toEqual([
      [{ name: 'webgpu', device }],
      [{ name: 'webgpu', device }],
    ]);
    expect(shapes).toEqual([
      [1, 1, 64, 64],
      [1, 1, 48, 64],
    ]);
    expect(await nets.lost).toBe('the graphics device was lost: driver reset');
  });

  it.each([
    ['the card gives no device', () => Promise.reject(new Error('no device')), /no device/],
    ['the runtime is not packed', async () => ({ lost: new Promise<never>(() => {}) }), /Failed to fetch/],
  ])('rejects in words when %s', async (_, requestDevice, why) => {
    const opening = openOnAdapter(
      adapterWith({ requestDevice }),
      () => Promise.reject(new TypeError('Failed to fetch dynamically imported module')),
      files,
    );
    await expect(opening).rejects.toThrow(why);
  });
});
