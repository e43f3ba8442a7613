import { useEffect, useRef } from "preact/hooks";
import type { ReferencePage } from "../../../derived/reference";
import { type HelpPlace, placeOfLink } from "./trail";

/** Where the build puts the reference pages and their style sheet, from a host's page. */
const folder = "reference/";

/**
 * A page of the reference as it is, in a shadow tree: it keeps its own style sheet and ids, which mean nothing outside it. A link
 * to another of its pages is followed in the pane; opened in a window of its own it leads to the page that was built.
 */
export const PageText = ({ page, place, returned, onFollow }: Props) => {
  const host = useRef<HTMLDivElement>(null);
  const follow = useRef(onFollow);
  follow.current = onFollow;
  useEffect(() => {
    const element = host.current;
    if (!element) return;
    const root = element.shadowRoot ?? element.attachShadow({ mode: "open" });
    fill(root, page, place, (next) => follow.current(next));
    whenStyled(root, () => arrive(root, place, returned));
  }, [page, place, returned]);
  return <div ref={host} class="pane-help-page" />;
};

const fill = (root: ShadowRoot, page: ReferencePage, { path }: HelpPlace, follow: (place: HelpPlace) => void): void => {
  if (!root.querySelector("link")) {
    const styles = document.createElement("link");
    styles.rel = "stylesheet";
    styles.href = `${folder}reference.css`;
    root.append(styles, document.createElement("div"));
  }
  const text = root.lastElementChild as HTMLDivElement;
  // All that was put into the template is escaped already.
  text.innerHTML = page.body.text;
  root.querySelectorAll("a").forEach((link, i) => {
    const leads = placeOfLink(link.getAttribute("href") ?? "", path);
    if (!leads) return;
    link.href = `${folder}${leads.path}${leads.part && `#${leads.part}`}`;
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      follow({ ...leads, link: i });
    });
  });
};

/** Unstyled, the text would lie elsewhere a moment later: it is hidden till then. Where the styles do not come, it is shown without. */
const whenStyled = (root: ShadowRoot, done: () => void): void => {
  const styles = root.querySelector("link") as HTMLLinkElement;
  const { host } = root;
  const show = () => {
    styles.dataset.settled = "";
    host.removeAttribute("hidden");
    done();
  };
  if (styles.dataset.settled === undefined) {
    host.setAttribute("hidden", "");
    for (const end of ["load", "error"]) styles.addEventListener(end, show, { once: true });
  } else done();
};

/** Puts the keyboard where one goes on reading: the link one left by, the part that was asked for, or the title. Who steps through the tabs stays there. */
const arrive = (root: ShadowRoot, { part }: HelpPlace, returned: number | undefined): void => {
  if (document.activeElement?.role === "tab") return;
  const link = returned === undefined ? undefined : root.querySelectorAll("a")[returned];
  const target = link ?? ((part && root.getElementById(part)) || root.querySelector("h1"));
  if (!target) return;
  if (!link) target.setAttribute("tabindex", "-1");
  target.focus({ preventScroll: true });
  const inSight = link || part ? target : root.host.closest(".pane");
  inSight?.scrollIntoView({ block: link ? "center" : "start" });
};

interface Props {
  readonly page: ReferencePage;
  readonly place: HelpPlace;
  readonly returned: number | undefined;
  readonly onFollow: (place: HelpPlace) => void;
}
