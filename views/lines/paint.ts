import type { QueenId } from '../../src/journal/ids.ts';
import type { DrawnQueen, Geometry, Joint } from './geometry.ts';
import type { Look } from './look.ts';
import { textWidth } from './text-width.ts';
import type { TimeScale } from './time-scale.ts';
import { type View, viewX, viewY } from './view.ts';

/** The colours of the page, read off it, since a canvas knows no style sheet. */
export interface Palette {
  readonly hues: readonly string[];
  readonly paper: string;
  readonly sunk: string;
  readonly ink: string;
  readonly quiet: string;
  readonly rule: string;
  readonly closed: string;
  readonly wash: string;
  readonly nameFont: string;
  readonly textFont: string;
}

export interface PaintInput {
  readonly geometry: Geometry;
  readonly scale: TimeScale;
  readonly view: View;
  readonly plot: number;
  readonly gutter: number;
  readonly height: number;
  readonly look: Look;
  readonly palette: Palette;
  /** Pixels of one lane at rest. */
  readonly lane: number;
}

/** Lanes lower than this show neither names nor knots. */
const FINE_LANE = 13;
const FADED = 0.16;

/** Paints the part of the drawing that is in sight; `queens` and `joints` are culled by the caller's index. */
export function paint(
  context: CanvasRenderingContext2D,
  input: PaintInput,
  queens: readonly DrawnQueen[],
  joints: readonly Joint[],
): void {
  const { plot, gutter, height, palette } = input;
  context.fillStyle = palette.paper;
  context.fillRect(0, 0, plot + gutter, height);
  context.save();
  context.beginPath();
  context.rect(0, 0, plot + 6, height);
  context.clip();
  paintWinters(context, input);
  paintChosen(context, input);
  const fine = input.lane * input.view.ky >= FINE_LANE;
  for (const joint of joints) paintJoint(context, input, joint, fine);
  for (const queen of queens) paintLife(context, input, queen, fine);
  context.restore();
  context.globalAlpha = 1;
  const todayInSight = viewX(input.view, input.geometry.width) <= plot + 1;
  context.fillStyle = todayInSight ? palette.ink : palette.rule;
  context.fillRect(plot, 0, 1, height);
  if (!fine) return;
  paintStrips(context, input);
  for (const queen of queens) paintName(context, input, queen);
}

function paintWinters(context: CanvasRenderingContext2D, { scale, view, height, palette }: PaintInput): void {
  for (const { winter } of scale.years) {
    if (!winter) continue;
    const from = viewX(view, winter.from);
    const to = viewX(view, winter.to);
    context.fillStyle = palette.sunk;
    context.fillRect(from, 0, to - from, height);
    if (!winter.over) continue;
    context.fillStyle = palette.rule;
    context.fillRect(Math.round(to), 0, 1, height);
  }
}

function paintChosen(
  context: CanvasRenderingContext2D,
  { geometry, view, look, plot, palette }: PaintInput,
): void {
  context.fillStyle = palette.wash;
  for (const id of look.chosen) {
    const queen = geometry.byId.get(id);
    if (queen) context.fillRect(0, viewY(view, queen.y) - 18, plot, 26);
  }
}

function alphaOf(look: Look, ...ids: readonly QueenId[]): number {
  return look.family === undefined || ids.every((id) => look.family?.has(id)) ? 1 : FADED;
}

function paintJoint(context: CanvasRenderingContext2D, input: PaintInput, joint: Joint, fine: boolean): void {
  const { view, look, palette } = input;
  const x = viewX(view, joint.x);
  const y = viewY(view, joint.y);
  const hue = palette.hues[look.hue(joint.dam) - 1] ?? palette.ink;
  context.lineWidth = fine ? 1.5 : 1;
  for (const daughter of [...joint.daughters].sort((a, b) => Number(a.carries) - Number(b.carries))) {
    context.strokeStyle = daughter.carries ? hue : palette.closed;
    context.globalAlpha = alphaOf(look, joint.dam, daughter.id);
    context.setLineDash(daughter.firm || !fine ? [] : [4, 3]);
    const end = viewY(view, daughter.y);
    context.beginPath();
    context.moveTo(x, y);
    context.lineTo(x, end);
    context.lineTo(x + (fine ? 6 : 1), end);
    context.stroke();
  }
  context.setLineDash([]);
  if (!fine) return;
  context.strokeStyle = joint.carries ? hue : palette.closed;
  context.fillStyle = ['swarm', 'supersedure', 'emergency'].includes(joint.how)
    ? palette.paper
    : context.strokeStyle;
  context.fillRect(x - 3.5, y - 3.5, 7, 7);
  context.strokeRect(x - 3.5, y - 3.5, 7, 7);
}

function paintLife(
  context: CanvasRenderingContext2D,
  input: PaintInput,
  queen: DrawnQueen,
  fine: boolean,
): void {
  const { view, look, palette } = input;
  const y = viewY(view, queen.y);
  const from = viewX(view, queen.from);
  const laying = viewX(view, queen.laying ?? queen.to);
  const to = viewX(view, queen.to);
  context.globalAlpha = alphaOf(look, queen.life.id);
  context.strokeStyle = queen.carries
    ? (palette.hues[look.hue(queen.life.id) - 1] ?? palette.ink)
    : palette.closed;
  context.fillStyle = context.strokeStyle;
  line(context, from, laying, y, fine ? 2 : 1, fine ? [2, 3] : []);
  line(context, laying, to, y, fine ? (queen.carries ? 3 : 1.75) : queen.carries ? 2 : 1, []);
  if (!fine) return;
  if (queen.reach > queen.to) line(context, to, viewX(view, queen.reach), y, 1, [1, 4]);
  for (const { x } of queen.winters) disc(context, viewX(view, x), y, queen.carries ? 4 : 3);
  paintEnd(context, queen, to, y, palette);
  if (!queen.name || to - from < textWidth(queen.name, 14)) return;
  context.fillStyle = palette.quiet;
  context.font = `italic 14px ${palette.nameFont}`;
  context.textAlign = 'start';
  context.fillText(queen.name, from + 6, y - 6);
}

function paintEnd(
  context: CanvasRenderingContext2D,
  queen: DrawnQueen,
  x: number,
  y: number,
  palette: Palette,
): void {
  const { fate } = queen.life;
  context.lineWidth = 2;
  context.beginPath();
  if (fate === 'living') {
    context.arc(x, y, 5, 0, 2 * Math.PI);
    context.fill();
    return;
  }
  if (fate === 'expected') {
    context.arc(x, y, 4.5, 0, 2 * Math.PI);
    context.fillStyle = palette.paper;
    context.fill();
  } else if (fate === 'failed') {
    context.moveTo(x - 3.5, y - 3.5);
    context.lineTo(x + 3.5, y + 3.5);
    context.moveTo(x + 3.5, y - 3.5);
    context.lineTo(x - 3.5, y + 3.5);
  } else if (fate === 'died') {
    context.moveTo(x, y - 5.5);
    context.lineTo(x, y + 5.5);
  } else if (fate === 'left') {
    context.moveTo(x - 3, y - 5);
    context.lineTo(x + 3, y);
    context.lineTo(x - 3, y + 5);
  } else {
    context.font = `700 13px ${palette.textFont}`;
    context.fillText('?', x + 3, y + 4);
  }
  context.stroke();
}

function paintStrips(context: CanvasRenderingContext2D, input: PaintInput): void {
  const { geometry, view, look, plot, gutter, height, palette } = input;
  for (const { line: id, y } of geometry.strips) {
    const top = viewY(view, y);
    if (top < -40 || top > height) continue;
    const { letter, name, note } = look.lineTitle(id);
    context.fillStyle = palette.rule;
    context.fillRect(0, Math.round(top), plot + gutter, 1);
    context.fillStyle = palette.ink;
    context.font = `700 14px ${palette.textFont}`;
    context.textAlign = 'start';
    context.fillText(`${letter}   ${name} · ${note}`, 4, top + 21);
  }
}

function paintName(
  context: CanvasRenderingContext2D,
  input: PaintInput,
  { life, y, from }: DrawnQueen,
): void {
  const label = viewX(input.view, from) <= input.plot && input.look.hereLabel(life, input.gutter - 16);
  if (!label) return;
  context.globalAlpha = alphaOf(input.look, life.id);
  context.fillStyle = life.named ? input.palette.ink : input.palette.quiet;
  context.font = `italic 16px ${input.palette.nameFont}`;
  context.textAlign = 'start';
  const x = input.plot + 12;
  const base = viewY(input.view, y) + 5;
  context.fillText(label.name, x, base);
  if (!label.box) return;
  const after = x + context.measureText(label.name).width + 7;
  context.fillStyle = input.palette.quiet;
  context.font = `14px ${input.palette.textFont}`;
  context.fillText(label.box, after, base);
}

function line(
  context: CanvasRenderingContext2D,
  from: number,
  to: number,
  y: number,
  width: number,
  dash: number[],
): void {
  if (to <= from) return;
  context.lineWidth = width;
  context.setLineDash(dash);
  context.beginPath();
  context.moveTo(from, y);
  context.lineTo(to, y);
  context.stroke();
  context.setLineDash([]);
}

function disc(context: CanvasRenderingContext2D, x: number, y: number, radius: number): void {
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fill();
}
