/**
 * Gives a large array's memory back at once; it is empty afterwards. Photos are large and the objects beside them few, so
 * a JavaScript engine sees no need to collect what was read, and holds 50 MB of it. Where an engine cannot give it back
 * (before ES2024), it collects the array as any other.
 */
export function release({ buffer }: Float32Array | Uint8ClampedArray): void {
  (buffer as { transfer?(length: number): ArrayBuffer }).transfer?.(0);
}
