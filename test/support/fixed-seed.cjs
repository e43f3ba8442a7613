// Property tests draw the same cases on every machine, so that a red run can be seen again. Long runs with other seeds are scripts.
const fc = require("fast-check");
fc.configureGlobal({ seed: 20 });
