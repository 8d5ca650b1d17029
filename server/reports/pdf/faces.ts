import { createRequire } from "node:module";
import type { Typefaces } from "./lines.ts";
import type { Weight } from "./looks.ts";
import { type EmbeddedFont, type Typeface, typeface } from "./typeface.ts";

/** Latin, Greek and Cyrillic with the signs of the trade (≥ µ °). */
const FILES: Record<Weight, string> = {
  regular: "@expo-google-fonts/roboto/400Regular/Roboto_400Regular.ttf",
  medium: "@expo-google-fonts/roboto/500Medium/Roboto_500Medium.ttf",
};
const require = createRequire(import.meta.url);

/** The fonts of a file: what is measured with them goes into it. */
export const openFaces = (file: PDFKit.PDFDocument): Typefaces => ({
  regular: open(file, "regular"),
  medium: open(file, "medium"),
});

function open(file: PDFKit.PDFDocument, weight: Weight): Typeface {
  file.font(require.resolve(FILES[weight]));
  return typeface((file as unknown as { _font: EmbeddedFont })._font);
}
