import { strings } from '../../words';

/** What the tool is not, and what to mind: always on the screen, never in the way. */
export const Cautions = () => (
  <section class="cautions" aria-labelledby="cautions-title">
    <h2 id="cautions-title">{strings.cautions.title}</h2>
    <ul>
      {strings.cautions.lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  </section>
);
