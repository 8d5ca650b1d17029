/** The sound of a phrase or a photograph, as the device knows it beside its bytes. */
export interface CardKeepsake {
  /** made here, so that the same one sent twice is kept once */
  id: string;
  kind: "clip" | "photo";
  job: string;
  /** the phrase it belongs to; a photograph may belong to the job alone */
  phrase?: string;
  /** when it was taken, ISO 8601 with the offset of the place */
  at: string;
  /** how long a clip sounds */
  seconds?: number;
  /** in picture elements */
  width?: number;
  height?: number;
  /** of its bytes: image/jpeg, audio/ogg, audio/wav */
  type: string;
  size: number;
  /** on the device and waiting, kept by the server, refused by it, or not wanted by the site */
  delivery: "waiting" | "kept" | "refused" | "unwanted";
  /** why it was refused or is not wanted, in words */
  problem?: string;
}
