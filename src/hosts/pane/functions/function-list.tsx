import type { AnyDefinition } from "../../../definition/define";

export const FunctionList = ({ functions, onChoose }: Props) => (
  <ul class="pane-functions">
    {functions.map((definition) => (
      <li key={definition.name}>
        <button type="button" class="pane-function" onClick={() => onChoose(definition)}>
          <span class="pane-function-name">{definition.name}</span>
          <span class="pane-function-summary">{definition.summary}</span>
        </button>
      </li>
    ))}
  </ul>
);

interface Props {
  readonly functions: readonly AnyDefinition[];
  readonly onChoose: (definition: AnyDefinition) => void;
}
