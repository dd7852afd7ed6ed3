import type { BedFrame } from '../../bed/types.ts';
import type { Pen } from '../pen.ts';
import { paintMap, type MapPaint } from './paint-map.ts';
import { tileWindow, windowAspect } from './tile-window.ts';

export interface MapDrawing extends MapPaint {
  /** Device pixels left clear around the tile. */
  margin?: number;
}

/** Where the tile lies inside the drawing, device pixels. */
export interface MapPlace {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** The greatest rectangle of the tile's shape inside the drawing. */
export function placeMap(frame: BedFrame, drawing: MapDrawing): MapPlace {
  const margin = drawing.margin ?? 0;
  const aspect = windowAspect(tileWindow(frame));
  const roomAcross = Math.max(1, drawing.width - 2 * margin);
  const roomUp = Math.max(1, drawing.height - 2 * margin);
  const width = Math.max(1, Math.round(Math.min(roomAcross, roomUp * aspect)));
  const height = Math.max(1, Math.round(width / aspect));
  return {
    left: Math.round((drawing.width - width) / 2),
    top: Math.round((drawing.height - height) / 2),
    width,
    height,
  };
}

/**
 * Draws the coverage map of a frame, to scale and centred, over what the canvas held.
 * @param pen a context whose canvas is at least `width` × `height` device pixels
 * @returns where the tile lies, for marks drawn on top
 */
export function drawMap(pen: Pen, frame: BedFrame, drawing: MapDrawing): MapPlace {
  const place = placeMap(frame, drawing);
  pen.clearRect(0, 0, drawing.width, drawing.height);
  const pixels = paintMap(frame, { ...drawing, width: place.width, height: place.height });
  pen.putImageData(new ImageData(pixels, place.width, place.height), place.left, place.top);
  pen.strokeStyle = drawing.palette.ink;
  pen.lineWidth = Math.max(1, drawing.scale ?? 1);
  pen.strokeRect(place.left + 0.5, place.top + 0.5, place.width - 1, place.height - 1);
  return place;
}
