/** What was given to the graphics to do. They are asked now and then how far they are: to wait for them holds up the page. */
export interface Finish {
  /** Marks the end of a picture just given. */
  mark: (now: number) => void;
  /** How many of the pictures marked are not finished. */
  pending: (now: number) => number;
  /** The time the last finished picture took the graphics, ms, as closely as they were asked; 0 before any. */
  tookMs: () => number;
  /** Forgets every mark: the graphics that knew them are gone. */
  forget: () => void;
}

/** The part of WebGL 2 that tells how far the graphics are. */
export type Fences = Pick<
  WebGL2RenderingContext,
  'fenceSync' | 'getSyncParameter' | 'deleteSync' | 'flush' | 'SYNC_GPU_COMMANDS_COMPLETE' | 'SYNC_STATUS' | 'SIGNALED'
>;

/** Watches how far the graphics are with the pictures they were given. Times are ms of one clock. */
export function watchFinish(gl: Fences): Finish {
  let marks: { fence: WebGLSync; given: number }[] = [];
  let freeSince = 0;
  let took = 0;
  return {
    mark: (now) => {
      const fence = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0);
      if (fence) marks.push({ fence, given: now });
      // What is not sent off is never finished.
      gl.flush();
    },
    pending: (now) => {
      for (let first = marks[0]; first; first = marks[0]) {
        if (gl.getSyncParameter(first.fence, gl.SYNC_STATUS) !== gl.SIGNALED) break;
        gl.deleteSync(first.fence);
        marks.shift();
        // A picture given before the one ahead of it was done had to wait for it.
        took = now - Math.max(first.given, freeSince);
        freeSince = now;
      }
      return marks.length;
    },
    tookMs: () => took,
    forget: () => {
      marks = [];
    },
  };
}
