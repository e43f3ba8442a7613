/** The way from a function to its page of the reference. */
export const HelpWay = ({ name, onHelp }: { name: string; onHelp: (name: string) => void }) => (
  <button type="button" class="pane-go pane-help-way" onClick={() => onHelp(name)}>
    Help for {name}
  </button>
);
