import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Case, marksOnPhoto, photoMeant, sameData } from '../../case';
import type { HandMark, HandMeasure } from '../../photo';
import type { Problem } from '../../problem';
import { type Measuring, startMeasuring } from '../../reader/measuring';
import type { ByHand } from '../parts/by-hand';

/** A mark with what was measured at it; null while it is being measured. */
export interface MeasuredMark {
  mark: HandMark;
  measured: readonly HandMeasure[] | null;
}

export interface Marks {
  marks: MeasuredMark[];
  problem: Problem | null;
  /** Shows a mark where it is moved to; nothing is kept yet. */
  move(mark: HandMark): void;
  /** Keeps all marks as they lie now, each with its measures. */
  rest(): void;
  add(mark: HandMark): void;
  remove(number: number): void;
  undo: (() => void) | null;
}

/** The marks of a photo: what the case keeps of them, and what the hand is just doing. */
export function useMarks(kase: Case, photoId: string, byHand: ByHand, photo: Blob): Marks {
  const kept = useMemo(() => marksOnPhoto(kase, photoId), [kase, photoId]);
  const keptMarks = useMemo(() => kept.map(({ mark }) => mark), [kept]);
  /** What the hand wants, until the case has it. */
  const [wanted, setWanted] = useState<readonly HandMark[] | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [past, setPast] = useState<readonly (readonly HandMark[])[]>([]);
  const measuring = useMeasuring(photo);
  const latest = useRef({ kept, wanted, kase });
  latest.current = { kept, wanted, kase };

  // The hand may want more by the time this runs: what it wants then counts.
  useEffect(() => {
    setWanted((now) => (now && sameData(now, keptMarks) ? null : now));
  }, [wanted, keptMarks]);

  const keep = async (next: readonly HandMark[]) => {
    setWanted(next);
    latest.current.wanted = next;
    const measured = await (await measuring()).measure(next);
    if (measured === null) return;
    setProblem(measured.ok ? null : measured.problem);
    const { kept: before, kase: now } = latest.current;
    const meant = photoMeant(
      now.listing,
      photoId,
      now.photos.find((one) => one.photoId === photoId),
    );
    if (!meant) return;
    for (const { id, mark } of before) if (!next.some(({ number }) => number === mark.number)) byHand.undo(id);
    for (const [at, mark] of next.entries()) {
      const measures = measured.ok ? (measured.value[at] ?? []) : [];
      const was = before.find((one) => one.mark.number === mark.number);
      if (was && sameData(was.mark, mark) && sameData(was.measured, measures)) continue;
      byHand.correct({ of: 'mark', photo: was?.photo ?? meant, mark, measured: measures });
    }
  };
  const current = () => latest.current.wanted ?? latest.current.kept.map(({ mark }) => mark);
  const step = (next: readonly HandMark[]) => {
    const before = latest.current.kept.map(({ mark }) => mark);
    if (sameData(before, next)) return setWanted(null);
    setPast((steps) => [...steps.slice(-99), before]);
    keep(next);
  };

  const shown = wanted ?? keptMarks;
  return {
    marks: shown.map((mark) => {
      const was = kept.find((one) => one.mark.number === mark.number);
      return { mark, measured: was && sameData(was.mark, mark) ? was.measured : null };
    }),
    problem,
    move(mark) {
      const next = current().map((one) => (one.number === mark.number ? mark : one));
      latest.current.wanted = next;
      setWanted(next);
    },
    rest: () => step(current()),
    add: (mark) => step([...current(), mark]),
    remove: (number) => step(current().filter((one) => one.number !== number)),
    undo:
      past.length === 0
        ? null
        : () => {
            const before = past.at(-1) ?? [];
            setPast(past.slice(0, -1));
            keep(before);
          },
  };
}

/** The worker that measures, started with the first mark and ended with the bench. */
function useMeasuring(photo: Blob): () => Promise<Measuring> {
  const started = useRef<Promise<Measuring> | null>(null);
  useEffect(() => {
    started.current = null;
    return () => {
      started.current?.then((measuring) => measuring.end());
    };
  }, [photo]);
  return () => {
    started.current ??= photo.arrayBuffer().then(startMeasuring);
    return started.current;
  };
}
