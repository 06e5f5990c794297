"use strict";

/** Dots of a saved picture for one of the page: sharp on paper too. */
const SHARPNESS = 2;

/** What a drawing takes from the style sheet, and would lose outside of the page. */
const DRAWN_WITH = ["fill", "stroke", "stroke-width", "stroke-dasharray", "font", "text-anchor", "image-rendering", "shape-rendering"];

const figureNamed = name => document.querySelector(`figure[data-name="${name}"]`);

/** Gives every figure a button that saves it as a picture. */
function offerPictures() {
  for (const figure of document.querySelectorAll("figure")) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "save";
    button.textContent = "Save as picture";
    button.setAttribute("aria-label", "Save as picture: " + titleOf(figure));
    button.addEventListener("click", () => savePicture(figure));
    figure.append(button);
  }
}

const sectionOf = figure => figure.closest("section").querySelector("h2").textContent;

function titleOf(figure) {
  const note = figure.dataset.name === "rotation" ? ", " + figure.dataset.note : "";
  return sectionOf(figure) + note;
}

async function savePicture(figure) {
  const canvas = await pictureOf(figure);
  canvas.toBlob(blob => {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = fileName(figure);
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  }, "image/png");
}

/** The event and the chart, in letters and digits of any script. */
function fileName(figure) {
  const words = [document.querySelector("h1").textContent, figure.dataset.name, figure.dataset.note || ""];
  return words.map(word => word.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "").slice(0, 60)).filter(Boolean).join("-") + ".png";
}

/** A figure as it stands on the page, under its event and what it shows, on paper of its own. */
async function pictureOf(figure) {
  const edge = 16;
  const head = 58;
  const frame = figure.getBoundingClientRect();
  const button = figure.querySelector(".save");
  const height = button.getBoundingClientRect().top - frame.top;
  const canvas = document.createElement("canvas");
  canvas.width = Math.ceil((frame.width + 2 * edge) * SHARPNESS);
  canvas.height = Math.ceil((height + head + 2 * edge) * SHARPNESS);
  const context = canvas.getContext("2d");
  context.scale(SHARPNESS, SHARPNESS);
  const paper = getComputedStyle(document.body);
  context.fillStyle = paper.backgroundColor;
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.fillStyle = paper.color;
  context.font = "600 17px system-ui, sans-serif";
  context.fillText(document.querySelector("h1").textContent, edge, edge + 16, frame.width);
  context.font = "14px system-ui, sans-serif";
  context.fillText([sectionOf(figure), figure.dataset.note].filter(Boolean).join(": "), edge, edge + 38, frame.width);
  context.translate(edge - frame.left, edge + head - frame.top);
  for (const svg of figure.querySelectorAll("svg")) await drawOn(context, svg, await imageOf(svg));
  context.imageSmoothingEnabled = false;
  for (const image of figure.querySelectorAll("img")) await drawOn(context, image, image);
  writeOn(context, figure, button);
  return canvas;
}

function drawOn(context, place, image) {
  const box = place.getBoundingClientRect();
  context.drawImage(image, box.left, box.top, box.width, box.height);
}

/** A drawing as an image, with the look that the style sheet gives it. */
async function imageOf(svg) {
  const box = svg.getBoundingClientRect();
  const copy = svg.cloneNode(true);
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  copy.setAttribute("width", box.width * SHARPNESS);
  copy.setAttribute("height", box.height * SHARPNESS);
  const parts = [...copy.querySelectorAll("*")];
  svg.querySelectorAll("*").forEach((part, i) => {
    const look = getComputedStyle(part);
    for (const property of DRAWN_WITH) parts[i].style.setProperty(property, look.getPropertyValue(property));
  });
  const image = new Image();
  image.src = "data:image/svg+xml;charset=utf-8," + encodeURIComponent(new XMLSerializer().serializeToString(copy));
  await image.decode();
  return image;
}

/** Headings, labels and the caption, word by word where the page has them. */
function writeOn(context, figure, button) {
  const texts = document.createTreeWalker(figure, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const text = texts.currentNode;
    if (text.parentElement.closest("svg") || button.contains(text)) continue;
    const look = getComputedStyle(text.parentElement);
    context.font = look.font;
    context.fillStyle = look.color;
    context.textBaseline = "middle";
    for (const word of text.data.matchAll(/[^\s\u00a0]+/g)) {
      const range = document.createRange();
      range.setStart(text, word.index);
      range.setEnd(text, word.index + word[0].length);
      const box = range.getBoundingClientRect();
      context.fillText(word[0], box.left, box.top + box.height / 2);
    }
  }
}
