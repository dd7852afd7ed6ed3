/** Reading square codes from the camera; the pictures never leave the page. */
export interface CodeReader {
  stop: () => void;
}

/** A picture every so often is enough for a code held still, and leaves a small machine its breath. */
const EVERY_MS = 250;

/**
 * Starts the camera and calls back with each new text it reads.
 * @throws when the camera may not be used
 */
export async function readCodes(video: HTMLVideoElement, found: (text: string) => void): Promise<CodeReader> {
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' }, audio: false });
  const { default: jsQR } = await import('jsqr');
  video.srcObject = stream;
  await video.play();
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  const seen = new Set<string>();
  const timer = setInterval(() => {
    if (!pen || video.videoWidth === 0) return;
    canvas.width = video.videoWidth;
    canvas.height = video.videoHeight;
    pen.drawImage(video, 0, 0);
    const { data, width, height } = pen.getImageData(0, 0, canvas.width, canvas.height);
    const text = jsQR(data, width, height)?.data ?? '';
    if (text === '' || seen.has(text)) return;
    seen.add(text);
    found(text);
  }, EVERY_MS);
  return {
    stop: () => {
      clearInterval(timer);
      for (const track of stream.getTracks()) track.stop();
      video.srcObject = null;
    },
  };
}
