import { watch } from "./watch";

void watch(() => import("./cell-work"));
