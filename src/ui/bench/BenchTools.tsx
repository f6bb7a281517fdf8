import { lightSides } from '../../photo';
import { kit, strings } from '../../words';
import { ProblemNote } from '../parts/ProblemNote';
import type { Relief, ReliefView } from './use-relief';
import type { Stage } from './use-stage';

export interface Light {
  brightness: number;
  contrast: number;
}
/** Light as the file has it. */
export const plainLight: Light = { brightness: 1, contrast: 1 };

interface Props {
  stage: Stage;
  light: Light;
  onLight: (light: Light) => void;
  /** Absent where a photo is only looked at larger. */
  relief?: Relief;
}

/** How large, how turned and in which light the photo is shown; none of it changes what is measured. */
export function ViewTools({ stage, light, onLight, relief }: Props) {
  const words = strings.bench;
  const { view } = stage;
  return (
    <>
      <fieldset class="row bench-view">
        <legend class="visually-hidden">{words.view}</legend>
        <button type="button" class="small" onClick={() => stage.zoomBy(1 / 1.5)}>
          {words.smaller}
        </button>
        <button type="button" class="small" onClick={() => stage.zoomBy(1.5)}>
          {words.larger}
        </button>
        <button type="button" class="small" onClick={stage.whole}>
          {words.whole}
        </button>
        <button type="button" class="small" onClick={stage.ownSize}>
          {words.ownSize}
        </button>
        <output class="muted">{words.zoom(kit.percent(view.zoom * (globalThis.devicePixelRatio || 1)))}</output>
      </fieldset>
      <details class="quiet">
        <summary>{words.light}</summary>
        <Slider
          name={words.turn}
          least={-180}
          most={180}
          step={1}
          value={Math.round(view.turn)}
          onValue={stage.turnTo}
        />
        <Slider
          name={words.brightness}
          least={0.2}
          most={3}
          step={0.05}
          value={light.brightness}
          onValue={(brightness) => onLight({ ...light, brightness })}
        />
        <Slider
          name={words.contrast}
          least={0.2}
          most={4}
          step={0.05}
          value={light.contrast}
          onValue={(contrast) => onLight({ ...light, contrast })}
        />
        {relief && <ReliefChoice {...relief} />}
        <button
          type="button"
          class="small"
          onClick={() => {
            onLight(plainLight);
            relief?.onView('plain');
            stage.turnTo(0);
          }}
        >
          {words.plain}
        </button>
      </details>
    </>
  );
}

function ReliefChoice({ view, onView, isDrawing, problem }: Relief) {
  const words = strings.bench;
  return (
    <>
      <label class="field">
        <span>{words.relief}</span>
        <select
          data-relief={isDrawing ? 'drawing' : view}
          value={view}
          onChange={({ currentTarget }) => onView(currentTarget.value as ReliefView)}
        >
          {(['plain', 'even', ...lightSides] as const).map((one) => (
            <option key={one} value={one}>
              {words.reliefViews[one]}
            </option>
          ))}
        </select>
      </label>
      {view !== 'plain' && <p class="muted hint">{words.reliefNote}</p>}
      <p class="muted hint" role="status">
        {isDrawing ? words.reliefDrawing : ''}
      </p>
      {problem && <ProblemNote problem={problem} />}
    </>
  );
}

interface SliderProps {
  name: string;
  least: number;
  most: number;
  step: number;
  value: number;
  onValue: (value: number) => void;
}

export const Slider = ({ name, least, most, step, value, onValue }: SliderProps) => (
  <label class="bench-slider">
    <span>{name}</span>
    <input
      type="range"
      min={least}
      max={most}
      step={step}
      value={value}
      onInput={({ currentTarget }) => onValue(Number(currentTarget.value))}
    />
    <output>{kit.number(value, step < 1 ? 2 : 0)}</output>
  </label>
);

export const Keys = () => (
  <details class="quiet">
    <summary>{strings.bench.keys}</summary>
    <dl class="bench-keys">
      {strings.bench.keyRows.map(([key, does]) => (
        <div key={key}>
          <dt>
            <kbd>{key}</kbd>
          </dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </details>
);
