import { type Parameter, sheetName } from "../../../definition/parameter";
import { introduced } from "../../../derived/wanted";
import { cellOf } from "../address";
import { tied } from "../explain/tied";
import type { Selection } from "../port";

/** One argument to fill in: typed, or taken from the selected cell. */
export const Field = ({ name, parameter, value, selection, onValue }: Props) => {
  const id = `pane-field-${name}`;
  const { choices, unit } = parameter;
  return (
    <div class="pane-form-row">
      <label class="pane-input-name" for={id}>
        {sheetName(name)}
        {unit && <span class="pane-unit"> in {unit}</span>}
      </label>
      <div class="pane-field-line">
        <input
          id={id}
          class="pane-field"
          type="text"
          autocomplete="off"
          spellcheck={false}
          value={value}
          list={choices && `${id}-choices`}
          aria-describedby={`${id}-meaning`}
          onInput={(event) => onValue(event.currentTarget.value)}
        />
        {selection && (
          <button
            type="button"
            class="pane-step-button"
            title="Take it from the selected cell"
            aria-label={`Take ${sheetName(name)} from cell ${cellOf(selection.address)}`}
            onClick={() => onValue(cellOf(selection.address))}
          >
            Take {cellOf(selection.address)}
          </button>
        )}
      </div>
      {choices && (
        <datalist id={`${id}-choices`}>
          {choices.map((choice) => (
            <option key={choice} value={choice} />
          ))}
        </datalist>
      )}
      <p class="pane-input-meaning" id={`${id}-meaning`}>
        {tied(introduced(parameter))}
      </p>
    </div>
  );
};

interface Props {
  readonly name: string;
  readonly parameter: Parameter;
  readonly value: string;
  readonly selection: Selection | undefined;
  readonly onValue: (value: string) => void;
}
