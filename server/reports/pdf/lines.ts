import type { Run } from "./blocks.ts";
import { PENS, type PenLook, type Weight } from "./looks.ts";
import { remember } from "./remember.ts";
import type { Typeface } from "./typeface.ts";

export type Typefaces = Record<Weight, Typeface>;

/** Words of one pen that follow each other on a line; the next ones begin where these end. */
export interface Stretch {
  pen: PenLook;
  glyphs: string;
}
export interface Line {
  stretches: Stretch[];
  width: number;
  height: number;
  /** how far below the line's top its letters stand */
  baseline: number;
}

interface Piece {
  pen: PenLook;
  text: string;
  glyphs: string;
  width: number;
}

/**
 * Behind a hyphen, dash or slash between words; a few letters are rather a unit (ft-lbf, bubbles/min), and before a
 * digit it is a tag or a fraction: these stay whole.
 */
const AFTER_HYPHEN = /(?<=\p{L}{3}[-–—/])(?=\p{L}{4})/u;

/** Breaks words into lines of at most this width. No letter is lost: a word longer than a line is cut where the line ends. */
export type BreakLines = (runs: readonly Run[], room: number) => Line[];

export function lineBreaker(faces: Typefaces): BreakLines {
  const pieces = remember((pen: PenLook) => {
    const face = faces[pen.weight];
    return remember((word: string) =>
      word.split(AFTER_HYPHEN).map((text): Piece => {
        const { glyphs, width } = face.word(text);
        return { pen, text, glyphs, width: width * pen.size };
      }),
    );
  });
  return (runs, room) => {
    const lines = new Lines(room, faces);
    for (const run of runs) {
      const piecesOf = pieces(PENS[run.pen]);
      for (const [at, word] of run.text.split(" ").entries()) {
        if (at > 0) lines.space(piecesOf(" "));
        if (word) lines.word(piecesOf(word));
      }
    }
    return lines.end();
  };
}

class Lines {
  private readonly done: Line[] = [];
  private line: Line;
  /** what may vanish at the end of a line */
  private spaces: Piece[] = [];
  /** what nothing has broken yet: words of two pens may stick together */
  private stuck: Piece[] = [];

  constructor(
    private readonly room: number,
    private readonly faces: Typefaces,
  ) {
    this.line = emptyLine();
  }

  /** A line may end between the parts of a word. */
  word(parts: readonly Piece[]): void {
    for (const [at, part] of parts.entries()) {
      if (at > 0) this.mayBreak();
      this.stuck.push(part);
    }
  }

  space(parts: readonly Piece[]): void {
    this.mayBreak();
    this.spaces.push(...parts);
  }

  private mayBreak(): void {
    if (this.stuck.length === 0) return;
    const width = widthOf(this.stuck);
    if (this.line.width + widthOf(this.spaces) + width > this.room && this.line.stretches.length > 0) this.next();
    for (const piece of this.spaces) if (this.line.width + piece.width + width <= this.room) this.put(piece);
    this.spaces = [];
    for (const piece of this.stuck) {
      if (width <= this.room) this.put(piece);
      else this.cut(piece);
    }
    this.stuck = [];
  }

  end(): Line[] {
    this.mayBreak();
    this.next();
    return this.done;
  }

  /** A space that ends a line takes no room, but keeps its word from the next one for whoever has it read out. */
  private hang(): void {
    const [space] = this.spaces;
    if (space && this.line.stretches.length > 0) this.put({ ...space, width: 0 });
    this.spaces = [];
  }

  private next(): void {
    this.hang();
    if (this.line.stretches.length === 0) {
      const { height, baseline } = this.faces.regular.line;
      const { size } = PENS.plain;
      this.line.height = height * size;
      this.line.baseline = baseline * size;
    }
    this.done.push(this.line);
    this.line = emptyLine();
  }

  private cut({ pen, text }: Piece): void {
    for (const char of text) {
      const { glyphs, width } = this.faces[pen.weight].word(char);
      if (this.line.width + width * pen.size > this.room && this.line.stretches.length > 0) this.next();
      this.put({ pen, text: char, glyphs, width: width * pen.size });
    }
  }

  private put({ pen, glyphs, width }: Piece): void {
    const { line } = this;
    const last = line.stretches.at(-1);
    if (last?.pen === pen) last.glyphs += glyphs;
    else {
      const face = this.faces[pen.weight].line;
      line.stretches.push({ pen, glyphs });
      line.height = Math.max(line.height, face.height * pen.size);
      line.baseline = Math.max(line.baseline, face.baseline * pen.size);
    }
    line.width += width;
  }
}

const emptyLine = (): Line => ({ stretches: [], width: 0, height: 0, baseline: 0 });
const widthOf = (pieces: readonly Piece[]) => pieces.reduce((all, one) => all + one.width, 0);
