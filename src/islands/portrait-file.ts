// A drawing of the page as a file of its own: XML that asks for nothing, as large as its paper.

const sizes = { a4: [297, 210], a3: [420, 297] } as const;

/** The text of an SVG file that shows what the page shows. */
export function drawingFile(drawing: SVGSVGElement, paper: keyof typeof sizes): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const [width, height] = sizes[paper];
  copy.setAttribute('width', `${width}mm`);
  copy.setAttribute('height', `${height}mm`);
  for (const each of [copy, ...copy.querySelectorAll('*')])
    for (const name of ['class', 'data-hk']) each.removeAttribute(name);
  const comments = document.createNodeIterator(copy, NodeFilter.SHOW_COMMENT);
  for (let node = comments.nextNode(); node; node = comments.nextNode()) (node as Comment).remove();
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}\n`;
}
