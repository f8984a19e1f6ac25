/** How the drawing is stretched and shifted on the screen: places at rest to places in sight. */
export interface View {
  readonly kx: number;
  readonly ky: number;
  readonly x: number;
  readonly y: number;
}

export const AT_REST: View = { kx: 1, ky: 1, x: 0, y: 0 };

/** Pixels of the drawing to pixels of the screen. */
export function viewX(view: View, x: number): number {
  return view.x + view.kx * x;
}

/** Pixels of the drawing to pixels of the screen. */
export function viewY(view: View, y: number): number {
  return view.y + view.ky * y;
}
