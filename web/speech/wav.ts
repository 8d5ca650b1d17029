/** Samples from -1 to 1 as a WAV file: RIFF/WAVE, PCM, 16 bit, mono. */
export function wavOf(samples: Float32Array, rate: number): Uint8Array<ArrayBuffer> {
  const file = new Uint8Array(44 + samples.length * 2);
  const view = new DataView(file.buffer);
  const letters = (at: number, text: string) => {
    for (let index = 0; index < text.length; index++) file[at + index] = text.charCodeAt(index);
  };
  letters(0, "RIFF");
  view.setUint32(4, file.length - 8, true);
  letters(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  letters(36, "data");
  view.setUint32(40, samples.length * 2, true);
  for (const [index, sample] of samples.entries())
    view.setInt16(44 + index * 2, Math.round(Math.max(-1, Math.min(1, sample)) * 32_767), true);
  return file;
}
