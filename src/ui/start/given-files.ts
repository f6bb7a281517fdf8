import { useEffect } from 'preact/hooks';

/** Whether a file is meant as a photo; a document is, too, so that it is told what to do with it. */
const isMeantAsPhoto = ({ type }: File): boolean => type.startsWith('image/') || type === 'application/pdf';

type Take = (files: readonly File[]) => void;

/** Takes photos that are dropped or pasted anywhere on the page, unless a part of it takes them itself. */
export const useGivenPhotos = (take: Take, awake: boolean): void =>
  useGiven(isMeantAsPhoto, take, { pasted: true, awake });

/** Takes what else is dropped anywhere on the page: files that are meant as no photo. */
export const useOtherFiles = (take: Take): void => useGiven(isMeantOtherwise, take, { pasted: false, awake: true });

const isMeantOtherwise = (file: File): boolean => !isMeantAsPhoto(file);

function useGiven(
  isMeant: (file: File) => boolean,
  take: Take,
  { pasted, awake }: { pasted: boolean; awake: boolean },
): void {
  useEffect(() => {
    if (!awake) return;
    const given = (event: Event, files: FileList | undefined) => {
      const meant = [...(files ?? [])].filter(isMeant);
      if (meant.length === 0) return;
      event.preventDefault();
      take(meant);
    };
    const ended = new AbortController();
    const { signal } = ended;
    // Without this the browser opens a dropped file in the page's place.
    document.addEventListener('dragover', (event) => event.preventDefault(), { signal });
    document.addEventListener('drop', (event) => given(event, event.dataTransfer?.files), { signal });
    if (pasted) document.addEventListener('paste', (event) => given(event, event.clipboardData?.files), { signal });
    return () => ended.abort();
  }, [isMeant, take, pasted, awake]);
}
