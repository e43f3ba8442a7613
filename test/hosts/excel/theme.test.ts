import { isDark } from "../../../src/hosts/excel/theme";

// The grounds of Excel's own themes are near white, middling grey and near black.
test.each([
  ["#FFFFFF", false],
  ["#E6E6E6", false],
  ["#262626", true],
  ["#000000", true],
  ["#00FF00", false],
  ["#0000FF", true],
])("on %s the pane is dark: %s", (ground, dark) => {
  expect(isDark(ground)).toBe(dark);
});
