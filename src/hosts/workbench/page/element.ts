/** An element of the page's own HTML, of the kind it must be. */
export const element = <E extends HTMLElement>(id: string, kind: new () => E): E => {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`The page has no ${id}.`);
  return found;
};
