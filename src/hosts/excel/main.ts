import { Memory } from "../../definition/memory";
import { catalogue } from "../../functions/index";
import "../pane/look/all";
import { associate } from "./associate";
import { associateRibbon } from "./ribbon";

// First of all and without waiting: Excel may call a function or an action as soon as this script has run.
const memory = new Memory();
associate(catalogue, memory);

// The pane is not needed for an answer. It is fetched while Excel gets ready.
const fetched = import(/* webpackChunkName: "pane" */ "./pane");
// Whether it came is looked at once it is wanted.
fetched.catch(() => {});

const shown = Office.onReady().then(async ({ host }) => {
  const place = document.getElementById("pane");
  // Outside Excel the page's own text stands: it is the add-in's help page.
  if (!place || host !== Office.HostType.Excel) return undefined;
  try {
    const { openPane } = await fetched;
    return openPane(place, memory, catalogue);
  } catch (reason) {
    place.replaceChildren("The pane could not be loaded: close it and open it again. The functions work without it.");
    throw reason;
  }
});

associateRibbon(async () => (await shown)?.show("Functions"));
