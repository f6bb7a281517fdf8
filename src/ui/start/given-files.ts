import { useEffect } from 'preact/hooks';

/** Whether a file is meant as a photo; a document is, too, so that it is told what to do with it. */
const isMeantAsPhoto = ({ type }: File): boolean => type.startsWith('image/') || type === 'application/pdf';

/** Takes photos that are dropped or pasted anywhere on the page, unless a part of it takes them itself. */
export function useGivenPhotos(take: (files: readonly File[]) => void, awake: boolean): void {
  useEffect(() => {
    if (!awake) return;
    const given = (event: Event, files: FileList | undefined) => {
      const photos = [...(files ?? [])].filter(isMeantAsPhoto);
      if (photos.length === 0) return;
      event.preventDefault();
      take(photos);
    };
    const dropped = (event: DragEvent) => given(event, event.dataTransfer?.files);
    const pasted = (event: ClipboardEvent) => given(event, event.clipboardData?.files);
    // Without this the browser opens a dropped file in the page's place.
    const allow = (event: DragEvent) => event.preventDefault();
    document.addEventListener('dragover', allow);
    document.addEventListener('drop', dropped);
    document.addEventListener('paste', pasted);
    return () => {
      document.removeEventListener('dragover', allow);
      document.removeEventListener('drop', dropped);
      document.removeEventListener('paste', pasted);
    };
  }, [take, awake]);
}

/** Takes what else is dropped anywhere on the page: files that are meant as no photo. */
export function useOtherFiles(take: (files: readonly File[]) => void): void {
  useEffect(() => {
    const allow = (event: DragEvent) => event.preventDefault();
    const dropped = (event: DragEvent) => {
      const others = [...(event.dataTransfer?.files ?? [])].filter((file) => !isMeantAsPhoto(file));
      if (others.length === 0) return;
      event.preventDefault();
      take(others);
    };
    document.addEventListener('dragover', allow);
    document.addEventListener('drop', dropped);
    return () => {
      document.removeEventListener('dragover', allow);
      document.removeEventListener('drop', dropped);
    };
  }, [take]);
}
