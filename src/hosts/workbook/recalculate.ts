import { watch } from "./watch";

void watch(() => import("./recalculate-work"));
