import { kit, strings } from '../../words';
import type { Stage } from './use-stage';

export interface Light {
  brightness: number;
  contrast: number;
}
/** Light as the file has it. */
export const plainLight: Light = { brightness: 1, contrast: 1 };

/** How large, how turned and how bright the photo is shown; none of it changes what is measured. */
export function ViewTools({ stage, light, onLight }: { stage: Stage; light: Light; onLight: (light: Light) => void }) {
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
        <button
          type="button"
          class="small"
          onClick={() => {
            onLight(plainLight);
            stage.turnTo(0);
          }}
        >
          {words.plain}
        </button>
      </details>
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
