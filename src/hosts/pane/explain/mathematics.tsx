import { useEffect, useState } from "preact/hooks";
import { isWide, piecesOf } from "./pieces";

/**
 * A line of mathematics as MathML, which browsers typeset themselves: no fonts to fetch and no inline styles, which the
 * pages' content security policy forbids. It wraps at its equals signs. Until KaTeX is there, and where it cannot
 * read the line, the plain line stands in.
 */
export const Mathematics = ({ tex, plain }: { tex: string; plain?: string }) => {
  const [pieces, setPieces] = useState<readonly string[]>();
  useEffect(() => {
    let isWanted = true;
    const show = (html: readonly string[] | undefined) => isWanted && setPieces(html);
    typeset(tex).then(show, () => show(undefined));
    return () => {
      isWanted = false;
    };
  }, [tex]);
  if (!pieces) return <p class="pane-plain">{plain ?? tex}</p>;
  return (
    <div class={isWide(tex) ? "pane-mathematics pane-mathematics-wide" : "pane-mathematics"}>
      {pieces.map((html) => (
        // biome-ignore lint/security/noDangerouslySetInnerHtml: KaTeX's own MathML; with `trust` off it escapes what it is given.
        <span key={html} dangerouslySetInnerHTML={{ __html: html }} />
      ))}
    </div>
  );
};

const typeset = async (tex: string): Promise<string[]> => {
  const { default: katex } = await import(/* webpackChunkName: "mathematics" */ "katex");
  const options = { output: "mathml", throwOnError: true, strict: "ignore", trust: false } as const;
  return piecesOf(tex).map((piece) => katex.renderToString(`\\displaystyle ${piece}`, options));
};
