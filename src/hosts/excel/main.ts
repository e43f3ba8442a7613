import { Memory } from "../../definition/memory";
import { catalogue } from "../../functions/index";
import { mountPane } from "../pane/mount";
import { associate } from "./associate";
import { excelPort } from "./port";
import { followTheme } from "./theme";

// First of all and without waiting: Excel may call a function as soon as this script has run.
const memory = new Memory();
associate(catalogue, memory);

void Office.onReady(({ host }) => {
  const pane = document.getElementById("pane");
  // Outside Excel the page's own text stands: it is the add-in's help page.
  if (!pane || host !== Office.HostType.Excel) return;
  followTheme();
  pane.replaceChildren();
  mountPane(pane, excelPort(memory), catalogue);
});
