// A printed PDF, read by a library of its own (pdf.js): its text with sizes and places, its colours, and its pages
// as pixels.

import assert from "node:assert/strict";
import jsQR from "jsqr";
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

/** Millimetres in a point. */
export const MM = 25.4 / 72;

const COLOURS = new Set([OPS.setFillRGBColor, OPS.setStrokeRGBColor]);
const IMAGES = new Set([OPS.paintImageXObject, OPS.paintInlineImageXObject, OPS.paintImageMaskXObject, OPS.shadingFill]);

/**
 * Its pages: { width, height, items: [{ text, size, x, y, width }], colours, images, pixels(dpi, box) }. Lengths are
 * points, places from the lower left; `pixels` gives { width, height, grey, coloured } of a box [x, y, width, height].
 */
export async function readPdf(bytes) {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = [];
  for (let number = 1; number <= pdf.numPages; number += 1) pages.push(await readPage(pdf, await pdf.getPage(number)));
  return pages;
}

async function readPage(pdf, page) {
  const [, , width, height] = page.view;
  const { items } = await page.getTextContent();
  const { fnArray, argsArray } = await page.getOperatorList();
  const colours = new Set(fnArray.flatMap((op, index) => (COLOURS.has(op) ? [String(argsArray[index][0]).toLowerCase()] : [])));
  return {
    width,
    height,
    colours,
    images: fnArray.filter((op) => IMAGES.has(op)).length,
    items: items.filter(({ str }) => str?.trim()).map(({ str, transform: [, , c, d, x, y], width: wide }) => (
      { text: str, size: Math.hypot(c, d), x, y, width: wide })),
    async pixels(dpi, [x, y, wide, high] = [0, 0, width, height]) {
      const scale = dpi / 72;
      const viewport = page.getViewport({ scale, offsetX: -x * scale, offsetY: -(height - y - high) * scale });
      const size = [Math.ceil(wide * scale), Math.ceil(high * scale)];
      const { canvas, context } = pdf.canvasFactory.create(...size);
      context.fillStyle = "#ffffff";
      context.fillRect(0, 0, ...size);
      await page.render({ canvas, canvasContext: context, viewport }).promise;
      const { data } = context.getImageData(0, 0, ...size);
      const grey = new Uint8ClampedArray(size[0] * size[1]);
      let coloured = 0;
      for (let at = 0; at < grey.length; at += 1) {
        const [red, green, blue] = data.subarray(4 * at, 4 * at + 3);
        grey[at] = green;
        if (Math.max(red, green, blue) - Math.min(red, green, blue) > 2) coloured += 1;
      }
      return { width: size[0], height: size[1], grey, coloured };
    },
  };
}

/** All text of some pages without white space, as it is compared. */
export const squeezed = (pages) => squeeze(pages.flatMap(({ items }) => items.map(({ text }) => text)).join(""));

/** A text without white space. */
export const squeeze = (text) => text.replace(/[\s\u00a0\u2009\u202f]+/g, "");

/** Reads the code above each "Scan to open this fill." with another library: its text, its modules and their printed width. */
export async function scanned(pages) {
  const found = [];
  const dpi = 400;
  for (const page of pages) {
    for (const { x, y, size } of page.items.filter(({ text }) => text.startsWith("Scan to"))) {
      const { width, height, grey } = await page.pixels(dpi, [x - 3 / MM, y + size, 74 / MM, 72 / MM]);
      const pixels = new Uint8ClampedArray(4 * grey.length);
      grey.forEach((light, at) => pixels.set([light, light, light, 255], 4 * at));
      const code = jsQR(pixels, width, height, { inversionAttempts: "dontInvert" });
      assert.ok(code, "a code is found");
      // A version has 17 modules a side and four more for each step; the centres of the upper finder patterns lie the
      // side less seven modules apart (ISO/IEC 18004, 6.3.1 and 6.3.3).
      const { topLeftFinderPattern: left, topRightFinderPattern: right } = code.location;
      const modules = 17 + 4 * code.version;
      const apart = Math.hypot(right.x - left.x, right.y - left.y) * 25.4 / dpi;
      found.push({ text: code.data, modules, module: apart / (modules - 7) });
    }
  }
  return found;
}
