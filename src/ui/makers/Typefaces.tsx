import { useState } from 'preact/hooks';
import { type FieldPath, largestPicture } from '../../maker';
import { strings } from '../../words';
import { Entries, textOf } from './Entries';
import { EntryFields, OfPieces } from './EntryFields';
import type { Editing } from './editing';
import { FieldProblems, TextField } from './fields';

const words = strings.makers;

/** How the characters of a period look, with pictures to compare. */
export const Typefaces = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['typefaces']}
    title={words.typefaces}
    add={words.addTypeface}
    fresh={() => ({ looks: '', used: ['1990', null] })}
    nameOf={(_, index) => words.typeface(index + 1)}
    whole
  >
    {(path) => (
      <>
        <div class="fields">
          <TextField edit={edit} path={[...path, 'looks']} label={words.looks} required />
          <OfPieces edit={edit} path={path} />
        </div>
        <Pictures edit={edit} path={[...path, 'pictures']} />
        <EntryFields edit={edit} path={path} />
      </>
    )}
  </Entries>
);

/** Pictures are kept in the file itself: small, and each with where it is from and its licence. */
function Pictures({ edit, path }: { edit: Editing; path: FieldPath }) {
  const [tooLarge, setTooLarge] = useState(false);
  const add = async (file: File | undefined) => {
    if (!file) return;
    const pixels = await dataOf(file);
    setTooLarge(pixels.length > largestPicture);
    if (pixels.length <= largestPicture) edit.insert(path, { shows: '', pixels, source: '', licence: '' });
  };
  const entries = edit.list(path);
  return (
    <fieldset class="group">
      <legend>{words.pictures}</legend>
      <FieldProblems edit={edit} path={path} />
      {entries.map((entry, index) => {
        const at = [...path, index];
        const pixels = textOf(entry, 'pixels', '');
        return (
          <div class="entry" key={index}>
            {/* Only pixels are shown: what else a strange file may hold here is told as a fault. */}
            {/^data:image\/(jpeg|png|webp);base64,/.test(pixels) && (
              <img class="typeface-picture" src={pixels} alt={textOf(entry, 'shows', words.pictures)} />
            )}
            <FieldProblems edit={edit} path={[...at, 'pixels']} />
            <div class="fields">
              <TextField edit={edit} path={[...at, 'shows']} label={words.shows} required />
              <TextField edit={edit} path={[...at, 'source']} label={words.pictureSource} required />
              <TextField edit={edit} path={[...at, 'licence']} label={words.pictureLicence} required />
            </div>
            <button type="button" class="small" onClick={() => edit.remove(path, index)}>
              {words.remove(textOf(entry, 'shows', `${index + 1}`))}
            </button>
          </div>
        );
      })}
      <label class="field">
        <span>{words.addPicture}</span>
        <input
          type="file"
          accept="image/png,image/jpeg,image/webp"
          onChange={async ({ currentTarget }) => {
            await add(currentTarget.files?.[0]);
            currentTarget.value = '';
          }}
        />
      </label>
      <p role="alert">{tooLarge ? words.pictureTooLarge(Math.floor((largestPicture * 3) / 4 / 1000)) : ''}</p>
    </fieldset>
  );
}

const dataOf = (file: File): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(file);
  });
