import { strings } from '../../words';
import type { PanelState } from '../panel/state';
import { FileChooser, photoFiles } from '../parts/FileChooser';
import { LooseRoom } from './LooseRoom';
import type { LooseSession } from './loose-session';

interface Props {
  state: PanelState;
  loose: LooseSession;
  maker: string;
  onMaker: (maker: string) => void;
  onPhotos: (files: readonly File[]) => void;
}

/** Photos without a listing: dropped or pasted anywhere on the page, or chosen here. */
export function ReadPhoto({ state, loose, maker, onMaker, onPhotos }: Props) {
  return (
    <section aria-labelledby="read-photo-title">
      <h2 id="read-photo-title">{strings.start.photo}</h2>
      <ChoosePhoto onPhotos={onPhotos} />
      <LooseRoom state={state} loose={loose} maker={maker} onMaker={onMaker} />
    </section>
  );
}

/** The way to a photo, with the forms that are read. */
export function ChoosePhoto({ onPhotos }: Pick<Props, 'onPhotos'>) {
  return (
    <>
      <p>{strings.start.photoHow}</p>
      <p class="row">
        <FileChooser label={strings.start.choosePhoto} accept={photoFiles} multiple onFiles={onPhotos} />
        <span class="muted hint">{strings.start.photoForms}</span>
      </p>
    </>
  );
}
