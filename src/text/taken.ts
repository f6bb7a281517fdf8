/**
 * Which characters of a text are part of something found. Asking costs the characters asked for, however much was
 * found before: comparing each find with all others would cost their square.
 */
export class Taken {
  private readonly characters: Uint8Array;

  constructor(length: number) {
    this.characters = new Uint8Array(length);
  }

  /** Whether any character from `start` up to `end` is taken. */
  overlaps(start: number, end: number): boolean {
    for (let at = start; at < end; at += 1) if (this.characters[at] === 1) return true;
    return false;
  }

  take(start: number, end: number): void {
    this.characters.fill(1, start, end);
  }
}
