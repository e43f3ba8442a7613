import type { Grid } from "./start-grid";

/** The grid goes light and dark with the rest of the page. */
export const followScheme = ({ api }: Grid): void => {
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const follow = () => api.toggleDarkMode(dark.matches);
  follow();
  dark.addEventListener("change", follow);
};
