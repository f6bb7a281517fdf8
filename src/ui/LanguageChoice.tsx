import { keepLanguage } from '../store/language-setting';
import { chooseLanguage, chosenLanguage, languageNames, spokenLanguages, strings } from '../words';

/** The language of the screens; the change is seen at once, and in the panel too. */
export function LanguageChoice() {
  return (
    <label class="row language-choice">
      {strings.language}
      <select
        value={chosenLanguage()}
        onChange={({ currentTarget }) => {
          const language = spokenLanguages.find((one) => one === currentTarget.value) ?? 'en';
          chooseLanguage(language);
          keepLanguage(language);
        }}
      >
        {spokenLanguages.map((one) => (
          <option key={one} value={one} lang={one}>
            {languageNames[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
