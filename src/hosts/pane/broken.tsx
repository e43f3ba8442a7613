import { Fragment } from "preact";

/** A long name or formula that may go on to the next line after each place that `after` finds. */
export const Broken = ({ text, after }: { text: string; after: RegExp }) => (
  <>
    {text.split(after).map((part, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: the same piece may stand twice, and its place tells them apart.
      <Fragment key={i}>
        {part}
        <wbr />
      </Fragment>
    ))}
  </>
);
