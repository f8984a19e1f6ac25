/** A figure as a keeper types it, with a comma or a point; nothing where it is none or not above 0. */
export function figureOf(text: string): number | undefined {
  const figure = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && Number.isFinite(figure) && figure > 0 ? figure : undefined;
}

/** Area of a comb side in dm2 from its width and height in cm; nothing while one is missing. */
export function areaOf(width: string, height: string): number | undefined {
  const [across, down] = [figureOf(width), figureOf(height)];
  return across === undefined || down === undefined ? undefined : (across * down) / 100;
}
