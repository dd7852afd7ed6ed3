import { rest } from '../rest.ts';
import { watchFinish } from './finish.ts';
import { pictureMs } from './measure-picture.ts';

/** Side of the square that is filled, pixels. */
const SIDE = 192;
const TIMES = 8;
/** What takes this long, ms, is no card's work. */
const PLAINLY_SLOW_MS = 15;

const CORNERS = `#version 300 es
void main() {
  gl_Position = vec4(gl_VertexID == 1 ? 3.0 : -1.0, gl_VertexID == 2 ? 3.0 : -1.0, 0.0, 1.0);
}`;

/** As much reckoning for a pixel as lit mortar asks for. */
const PIXELS = `#version 300 es
precision highp float;
out vec4 colour;
void main() {
  vec2 place = gl_FragCoord.xy;
  float sum = 0.0;
  for (int n = 0; n < 24; n++) {
    place = fract(place * 1.37 + sum);
    sum += sin(place.x * 12.9 + place.y * 78.2);
  }
  colour = vec4(sum);
}`;

/**
 * How long the graphics take to fill a square of 192 pixels eight times over, ms, found while the page goes on. A card
 * does it in one or two; the processor, where it draws, in ten times that.
 * @returns infinity where there is no WebGL 2
 */
export async function fillMs(): Promise<number> {
  const canvas = document.createElement('canvas');
  canvas.width = SIDE;
  canvas.height = SIDE;
  const gl = canvas.getContext('webgl2', { antialias: true });
  const program = gl?.createProgram();
  if (!gl || !program) return Infinity;
  for (const [kind, source] of [
    [gl.VERTEX_SHADER, CORNERS],
    [gl.FRAGMENT_SHADER, PIXELS],
  ] as const) {
    const shader = gl.createShader(kind);
    if (!shader) return Infinity;
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.linkProgram(program);
  gl.useProgram(program);
  const finish = watchFinish(gl);
  const took = await pictureMs({
    draw: () => {
      for (let n = 0; n < TIMES; n++) gl.drawArrays(gl.TRIANGLES, 0, 3);
      finish.mark(performance.now());
    },
    finish,
    slowMs: PLAINLY_SLOW_MS,
    now: () => performance.now(),
    rest,
    goesOn: () => !gl.isContextLost(),
  });
  // A browser keeps only so many of them.
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return took ?? Infinity;
}
