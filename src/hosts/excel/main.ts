import { Memory } from "../../definition/memory";
import { catalogue } from "../../functions/index";
import { mountPane } from "../pane/mount";
import { associate } from "./associate";
import { excelPort } from "./port";
import { associateRibbon } from "./ribbon";
import { followTheme } from "./theme";

// First of all and without waiting: Excel may call a function or an action as soon as this script has run.
const memory = new Memory();
associate(catalogue, memory);
associateRibbon();

void Office.onReady(({ host }) => {
  const pane = document.getElementById("pane");
  // Outside Excel the page's own text stands: it is the add-in's help page.
  if (!pane || host !== Office.HostType.Excel) return;
  followTheme();
  pane.replaceChildren();
  // Spills can be asked about since this set (Excel 2021). The manifest asks for it too, but not every way in reads that.
  if (Office.context.requirements.isSetSupported("ExcelApi", "1.12")) mountPane(pane, excelPort(memory), catalogue);
  else
    pane.append("This Excel is too old for the pane, which needs Excel 2021 or Microsoft 365. The functions may work.");
});
