import type { Tag } from "./looks.ts";

/** One paragraph as it is read out, on however many pages it stands. */
export interface Passage {
  tag: Tag;
}
/** Marks on a page that belong to one passage; without one they are looks only: a footer, a frame. */
export interface Marks {
  passage?: Passage;
  marks: string;
}

/**
 * What is read in which order and as what (a heading, a list, a paragraph), kept in the file beside its looks: PDF's
 * structure, for those who have it read out to them.
 */
export class ReadOrder {
  private readonly root: Element;
  private readonly elements = new Map<Passage, Element>();
  private list: Element | undefined;

  constructor(private readonly file: PDFKit.PDFDocument) {
    this.root = file.struct("Document");
    file.addStructure(this.root);
  }

  write({ passage, marks }: Marks): void {
    if (!passage) {
      this.file.markContent("Artifact").addContent(marks).endMarkedContent();
      return;
    }
    const content = this.file.markStructureContent(passage.tag);
    this.file.addContent(marks).endMarkedContent();
    this.elementOf(passage).add(content);
  }

  end(): void {
    this.root.end();
  }

  private elementOf(passage: Passage): Element {
    const known = this.elements.get(passage);
    if (known) return known;
    const element = this.file.struct(passage.tag);
    this.elements.set(passage, element);
    if (passage.tag !== "LBody") this.list = undefined;
    else if (!this.list) {
      this.list = this.file.struct("L");
      this.root.add(this.list);
    }
    if (this.list) this.list.add(this.file.struct("LI").add(element));
    else this.root.add(element);
    return element;
  }
}

type Element = PDFKit.PDFStructureElement;
