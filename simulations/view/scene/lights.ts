import {
  BackSide,
  Color,
  DirectionalLight,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  PMREMGenerator,
  Scene,
  SphereGeometry,
  type Texture,
  type WebGLRenderer,
} from 'three';

/** The light of a workshop: a low window to the left, a pale ceiling, the floor's own glow from below. */
export interface Workshop {
  sun: DirectionalLight;
  sky: HemisphereLight;
  /** Fits the shadow to the slab, mm. */
  fit: (centre: [x: number, y: number], radius: number) => void;
  setShadow: (texels: number, blur: number) => void;
  setDark: (dark: boolean) => void;
}

export function makeWorkshop(): Workshop {
  const sun = new DirectionalLight('#fffaf3', 2.3);
  const sky = new HemisphereLight('#f6f7f8', '#b3aca2', 1.35);
  sun.castShadow = true;
  const frustum = sun.shadow.camera;
  return {
    sun,
    sky,
    fit: ([x, y], radius) => {
      // Raking light, 30° over the floor: ridges of a few millimetres throw shadows one can see.
      sun.target.position.set(x, 0, -y);
      sun.position.set(x - radius * 1.5, radius * 1.15, -y - radius * 0.55);
      frustum.left = -radius;
      frustum.right = radius;
      frustum.top = radius;
      frustum.bottom = -radius;
      frustum.near = radius * 0.3;
      frustum.far = radius * 4;
      frustum.updateProjectionMatrix();
      sun.shadow.normalBias = 0.35;
      sun.shadow.bias = -0.0006;
      sun.target.updateMatrixWorld();
    },
    setShadow: (texels, blur) => {
      sun.shadow.radius = blur;
      sun.castShadow = texels > 0;
      sun.shadow.mapSize.set(texels || 1, texels || 1);
      sun.shadow.map?.dispose();
      sun.shadow.map = null;
    },
    setDark: (dark) => {
      // A lamp over the bench: the room is dark, what lies on the bench is not.
      sun.intensity = dark ? 2.5 : 2.3;
      sky.intensity = dark ? 1.3 : 1.35;
      sky.groundColor = new Color(dark ? '#8d857b' : '#b3aca2');
    },
  };
}

/** A small room to be mirrored in wet mortar, glaze and steel: a bright window in a warm wall. */
export function makeReflections(renderer: WebGLRenderer): Texture {
  const room = new Scene();
  const wall = new Mesh(new SphereGeometry(50, 24, 16), new MeshBasicMaterial({ color: '#8c857b', side: BackSide }));
  const pane = (x: number, y: number, z: number, size: number, tone: number): void => {
    const light = new Mesh(
      new SphereGeometry(size, 16, 12),
      new MeshBasicMaterial({ color: new Color(tone, tone * 0.97, tone * 0.92) }),
    );
    light.position.set(x, y, z);
    room.add(light);
  };
  room.add(wall);
  pane(-36, 22, -12, 12, 7);
  pane(0, 44, 0, 16, 1.6);
  pane(34, 12, 26, 9, 1.4);
  const maker = new PMREMGenerator(renderer);
  const made = maker.fromScene(room, 0.03).texture;
  maker.dispose();
  room.traverse((thing) => {
    if (!(thing instanceof Mesh)) return;
    (thing.geometry as SphereGeometry).dispose();
    (thing.material as MeshBasicMaterial).dispose();
  });
  return made;
}
