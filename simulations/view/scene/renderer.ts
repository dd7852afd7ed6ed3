import { NeutralToneMapping, PCFShadowMap, WebGLRenderer, type Camera, type Scene } from 'three';

import { rest } from '../rest.ts';

/**
 * What draws a stage; throws where the browser gives no WebGL 2.
 * @param smooth whether the graphics are to smooth edges
 */
export function makeRenderer(canvas: HTMLCanvasElement, smooth: boolean): WebGLRenderer {
  const renderer = new WebGLRenderer({ canvas, antialias: smooth, alpha: true, powerPreference: 'high-performance' });
  renderer.setClearAlpha(0);
  // Counted over all the panes of a picture.
  renderer.info.autoReset = false;
  renderer.localClippingEnabled = true;
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  renderer.shadowMap.autoUpdate = false;
  renderer.toneMapping = NeutralToneMapping;
  // Each answer of the graphics is waited for: what can be asked is asked while they have nothing to do yet, and whether
  // a program is sound is asked by the tests, which look at what it draws.
  renderer.capabilities.getMaxAnisotropy();
  renderer.debug.checkShaderErrors = false;
  return renderer;
}

/**
 * Lets the graphics make the programs that draw a scene, which takes them long, while the page goes on.
 * @param goesOn whether they are still wanted
 */
export async function makePrograms(
  renderer: WebGLRenderer,
  scene: Scene,
  camera: Camera,
  goesOn: () => boolean,
): Promise<void> {
  if (renderer.extensions.has('KHR_parallel_shader_compile')) await renderer.compileAsync(scene, camera);
  else renderer.compile(scene, camera);
  // What the first picture would ask about every program at once, and wait for.
  for (const program of [...(renderer.info.programs ?? [])]) {
    if (!goesOn()) return;
    program.getUniforms();
    program.getAttributes();
    await rest();
  }
}
