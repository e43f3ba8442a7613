import { useId, useState } from "preact/hooks";
import type { Plot } from "../../../definition/plot";
import { say } from "../../../metrology/say";
import { tied } from "../explain/tied";
import { Drawing } from "./drawing";
import { Key } from "./key";
import { SampleTable } from "./sample-table";
import { columnsOf, nearest, type Reading, readingsOf } from "./samples";

/** A picture with its crosshair, a slider that steps through the given samples, and the same numbers in a table. */
export const Picture = ({ plot }: { plot: Plot }) => {
  const id = useId();
  const readings = readingsOf(plot);
  const asked = plot.points?.find(({ role }) => role === "asked") ?? plot.points?.[0];
  const start = nearest(readings, asked?.x ?? plot.x.from);
  const [stop, setStop] = useState<number>();
  const at = Math.min(stop ?? start, readings.length - 1);
  const reading = readings[at];
  const columns = columnsOf(plot);
  const text = reading ? inWords(reading, plot) : "";
  return (
    <figure class="pane-picture">
      <figcaption class="pane-caption">
        <span class="pane-caption-title">{tied(plot.title)}</span> {tied(plot.sentence)}
      </figcaption>
      <Drawing
        plot={plot}
        crosshair={stop === undefined ? undefined : reading?.x}
        onPoint={(x) => setStop(nearest(readings, x))}
      />
      <Key plot={plot} />
      {readings.length > 1 && (
        <div class="pane-steps-along">
          <label class="pane-label" for={id}>
            Step along the picture
          </label>
          <input
            id={id}
            class="pane-slider"
            type="range"
            min={0}
            max={readings.length - 1}
            step={1}
            value={at}
            aria-valuetext={text}
            onInput={(event) => setStop(Number(event.currentTarget.value))}
          />
          <output class="pane-reading" for={id}>
            {text}
          </output>
        </div>
      )}
      <SampleTable plot={plot} columns={columns} readings={readings} />
    </figure>
  );
};

const inWords = ({ x, texts, points }: Reading, { x: axis, bands = [], lines = [] }: Plot): string => {
  const [from, to] = [(i: number) => texts[2 * i], (i: number) => texts[2 * i + 1]];
  const series = [
    ...bands.map(
      ({ name }, i) => from(i) && (from(i) === to(i) ? `${name} ${from(i)}` : `${name} from ${from(i)} to ${to(i)}`),
    ),
    ...lines.map(({ name }, i) => texts[2 * bands.length + i] && `${name} ${texts[2 * bands.length + i]}`),
  ];
  const place = `${axis.quantity} ${say(x, axis.unit)}: `;
  const told = [...series.filter(Boolean), ...points].join("; ");
  // "pole 1: 50 Ω" names its place itself.
  return tied(told.startsWith(place) ? told : `${place}${told}`);
};
