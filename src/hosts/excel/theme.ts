/** Follows Excel's own light or dark theme, where Excel tells it; elsewhere the system's stands. */
export const followTheme = (): void => {
  const background = Office.context.officeTheme?.bodyBackgroundColor;
  if (background) document.documentElement.style.colorScheme = isDark(background) ? "dark" : "light";
};

/** Whether "#262626" is nearer to black than to white. */
export const isDark = (colour: string): boolean => {
  const [red = 0, green = 0, blue = 0] = (colour.match(/[0-9a-f]{2}/gi) ?? []).map((pair) => Number.parseInt(pair, 16));
  // Rec. 709 luma weights: the eye takes most of its light from green.
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
};
