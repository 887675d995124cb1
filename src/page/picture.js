"use strict";

// The engine's own drawing. Whatever could act or reach outside is dropped before it enters the page.

const pictureTags = new Set(["svg", "g", "title", "desc", "line", "polyline", "polygon", "path", "rect", "circle", "ellipse", "text", "tspan", "defs", "pattern"]);

function safePicture(text) {
  const drawing = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  if (drawing.localName !== "svg") return null;
  for (const element of [...drawing.querySelectorAll("*"), drawing]) {
    if (!pictureTags.has(element.localName)) {
      element.remove();
      continue;
    }
    for (const { name } of [...element.attributes]) if (/^on/i.test(name) || /href$/i.test(name) || name === "style") element.removeAttribute(name);
  }
  return document.importNode(drawing, true);
}

// The drawing keeps its shape and is never wider than the page.
function pictureView() {
  const node = make("div", { class: "picture" });
  function show(text, good) {
    node.classList.toggle("stale", !good);
    if (!good) return;
    const drawing = text ? safePicture(text) : null;
    node.replaceChildren(...(drawing ? [drawing] : []));
    if (!drawing) return;
    const [, , width, height] = (drawing.getAttribute("viewBox") || `0 0 ${drawing.getAttribute("width")} ${drawing.getAttribute("height")}`).split(/[ ,]+/).map(Number);
    drawing.setAttribute("viewBox", `0 0 ${width} ${height}`);
    drawing.removeAttribute("width");
    drawing.removeAttribute("height");
    drawing.setAttribute("role", "img");
    drawing.style.maxWidth = `${width}px`;
  }
  return { node, show };
}
