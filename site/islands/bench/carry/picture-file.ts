import type { BedFrame } from '@sim/bed/types.ts';
import { drawMap } from '@sim/view/map/draw-map.ts';
import type { ViewPalette } from '@sim/view/palette.ts';
import { penOf } from '@sim/view/pen.ts';

const WIDE = 1600;
const EDGE = 48;
const TEXT = 34;
const MAP_HIGH = 560;
const LETTERS = "'Atkinson Hyperlegible Next Variable', system-ui, sans-serif";

/** Breaks a text into lines that fit. */
function lines(pen: CanvasRenderingContext2D, text: string, room: number): string[] {
  const found: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (pen.measureText(longer).width > room && line !== '') {
      found.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? found : [...found, line];
}

/** One sheet to keep: the picture, the back of the tile as a map, and what both say. */
export function pictureFile(
  picture: ImageBitmap | null,
  frame: BedFrame,
  palette: ViewPalette,
  title: string,
  said: string,
): Promise<Blob | null> {
  const sheet = document.createElement('canvas');
  const pen = penOf(sheet);
  if (!pen) return Promise.resolve(null);
  const pictureHigh = picture ? Math.round((WIDE * picture.height) / picture.width) : 0;
  pen.font = `${TEXT}px ${LETTERS}`;
  const text = lines(pen, said, WIDE - 2 * EDGE);
  sheet.width = WIDE;
  sheet.height = EDGE * 3 + TEXT * 2 + pictureHigh + MAP_HIGH + (text.length + 1) * TEXT * 1.4;
  pen.fillStyle = palette.paper;
  pen.fillRect(0, 0, sheet.width, sheet.height);
  let at = EDGE + TEXT;
  pen.fillStyle = palette.ink;
  pen.font = `700 ${TEXT * 1.35}px ${LETTERS}`;
  pen.fillText(title, EDGE, at);
  at += TEXT;
  if (picture) pen.drawImage(picture, 0, at, WIDE, pictureHigh);
  at += pictureHigh + EDGE / 2;
  const map = document.createElement('canvas');
  map.width = WIDE - 2 * EDGE;
  map.height = MAP_HIGH;
  const mapPen = penOf(map);
  if (mapPen) drawMap(mapPen, frame, { width: map.width, height: map.height, palette, turnedOver: true, scale: 2 });
  pen.drawImage(map, EDGE, at);
  at += MAP_HIGH + EDGE;
  pen.fillStyle = palette.ink;
  pen.font = `${TEXT}px ${LETTERS}`;
  for (const line of text) {
    pen.fillText(line, EDGE, at);
    at += TEXT * 1.4;
  }
  return new Promise((done) => sheet.toBlob(done, 'image/png'));
}
