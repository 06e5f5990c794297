"use strict";

/** The answer of the program, and what pictures need besides. */
const answer = JSON.parse(document.getElementById("answer").textContent);
const data = JSON.parse(document.getElementById("data").textContent);

/** A drawing that fills its place and keeps its shape when the page is scaled or printed. */
function drawing(place, height, label) {
  const width = Math.max(260, place.clientWidth || 640);
  const svg = d3.create("svg").attr("viewBox", [0, 0, width, height]).attr("role", "img").attr("aria-label", label);
  place.replaceChildren(svg.node());
  return { svg, width, height };
}

/** Whether a tick fits: as many as leave sixty pixels each. */
const ticks = (pixels, each) => Math.max(2, Math.floor(pixels / (each || 60)));

/** One row for each thing: a dot at its value, a bar over its interval; a margin on both sides of zero if there is one. */
function dotsAndIntervals(place, rows, options) {
  const rowHeight = 26;
  const margin = { left: options.left, right: 16, top: 8, bottom: 40 };
  const { svg, width, height } = drawing(place, margin.top + rows.length * rowHeight + margin.bottom, options.label);
  const all = rows.flatMap(row => [row.low ?? row.value, row.high ?? row.value]).concat(options.include || []);
  const x = d3.scaleLinear().domain(d3.extent(all)).nice().range([margin.left, width - margin.right]);
  const y = i => margin.top + (i + 0.5) * rowHeight;
  if (options.margin) {
    const [from, to] = options.margin.map(x);
    svg.append("rect").attr("class", "margin").attr("x", from).attr("width", to - from)
      .attr("y", margin.top).attr("height", rows.length * rowHeight);
    svg.append("line").attr("class", "guide").attr("x1", x(0)).attr("x2", x(0))
      .attr("y1", margin.top).attr("y2", height - margin.bottom);
  }
  svg.append("g").attr("transform", `translate(0,${height - margin.bottom})`)
    .call(d3.axisBottom(x).ticks(ticks(width - margin.left)));
  svg.append("text").attr("x", width - margin.right).attr("y", height - 6).attr("text-anchor", "end").text(options.unit);
  const row = svg.append("g").selectAll("g").data(rows).join("g");
  row.append("text").attr("x", 0).attr("y", (d, i) => y(i) + 4).text(d => d.name);
  row.filter(d => d.low != null).append("line").attr("class", "interval")
    .attr("x1", d => x(d.low)).attr("x2", d => x(d.high))
    .attr("y1", d => y(rows.indexOf(d))).attr("y2", d => y(rows.indexOf(d)));
  row.append("circle").attr("class", "dot").attr("r", 5).attr("cx", d => x(d.value)).attr("cy", (d, i) => y(i));
}

function scoresChart() {
  const rows = answer.squads.map(squad => ({
    name: shortened("Squad " + squad.id, 16),
    value: squad.meanScore,
    low: squad.meanScoreCi95?.low,
    high: squad.meanScoreCi95?.high
  }));
  dotsAndIntervals(document.getElementById("scores-chart"), rows, {
    left: 110, unit: "pins a game", label: "Mean score of each squad with its interval; the numbers stand in the table below."
  });
}

/** A name that has to fit into a drawing; it stands in full in the tables. */
function shortened(name, most) {
  const letters = Array.from(name);
  return letters.length <= most ? name : letters.slice(0, most - 1).join("") + "\u2026";
}

/** Exit windows through the event, a panel for each style and hand, all with the same scale. */
function windowsCharts() {
  const place = document.getElementById("windows-chart");
  const most = d3.max(data.windows.flatMap(kind => kind.points.map(point => point.high))) || 20;
  place.replaceChildren();
  for (const kind of data.windows) {
    const panel = document.createElement("div");
    const head = document.createElement("h3");
    head.textContent = `${kind.style} (${kind.hand})`;
    const chart = document.createElement("div");
    panel.append(head, chart);
    place.append(panel);
    windowsChart(chart, kind, most);
  }
}

function windowsChart(place, kind, most) {
  const margin = { left: 30, right: 8, top: 18, bottom: 34 };
  const label = `Exit window of ${kind.style}, ${kind.hand} hand, game by game; the numbers stand in the tables below.`;
  const { svg, width, height } = drawing(place, 170, label);
  const x = d3.scaleLinear().domain([-0.5, kind.points.length - 0.5]).range([margin.left, width - margin.right]);
  const y = d3.scaleLinear().domain([0, Math.ceil(most / 5) * 5]).range([height - margin.bottom, margin.top]);
  const squads = d3.groups(kind.points.map((point, i) => ({ ...point, i })), point => point.squad);
  svg.append("g").attr("transform", `translate(${margin.left},0)`).call(d3.axisLeft(y).ticks(4));
  svg.append("text").attr("x", 0).attr("y", 11).text("board");
  const games = svg.append("g");
  squads.forEach(([squad, points], s) => {
    const known = point => point.low != null;
    games.append("path").attr("class", "band").attr("d", d3.area().defined(known)
      .x(p => x(p.i)).y0(p => y(p.low)).y1(p => y(p.high))(points));
    games.append("path").attr("class", "best").attr("d", d3.line().defined(known).x(p => x(p.i)).y(p => y(p.best))(points));
    const every = Math.ceil(points.length * 14 / Math.max(14, x(points.length) - x(0)));
    games.selectAll(null).data(points.filter((p, i) => i % every === 0)).join("text")
      .attr("text-anchor", "middle").attr("x", p => x(p.i)).attr("y", height - margin.bottom + 14).text(p => p.game);
    games.append("text").attr("x", (x(points[0].i) + x(points.at(-1).i)) / 2).attr("y", height - 4)
      .attr("text-anchor", "middle").text(shortened(`${squads.length > 3 ? "" : "games of "}${squad}`, 18));
    if (s > 0) {
      games.append("line").attr("class", "guide").attr("x1", x(points[0].i - 0.5)).attr("x2", x(points[0].i - 0.5))
        .attr("y1", margin.top).attr("y2", height - margin.bottom);
    }
  });
}

/** The way of every group over the pairs. */
function rotationCharts(chosen) {
  document.querySelectorAll(".rotation-chart").forEach((place, s) => rotationChart(place, data.rotations[s], chosen));
}

function rotationChart(place, rotation, chosen) {
  const margin = { left: 52, right: 40, top: 24, bottom: 26 };
  const games = rotation.pairByGameAndGroup;
  const label = `Pairs of each group of ${rotation.squads}, game by game; they stand in the table below.`;
  const { svg, width, height } = drawing(place, margin.top + margin.bottom + Math.max(60, rotation.pairs.length * 18), label);
  const x = d3.scalePoint().domain(d3.range(games.length)).range([margin.left + 12, width - margin.right]).padding(games.length > 1 ? 0 : 0.5);
  const y = d3.scalePoint().domain(d3.range(rotation.pairs.length)).range([margin.top, height - margin.bottom]).padding(0.5);
  svg.append("g").attr("transform", `translate(${margin.left},0)`)
    .call(d3.axisLeft(y).tickFormat(pair => rotation.pairs[pair]));
  svg.append("g").attr("transform", `translate(0,${height - margin.bottom})`)
    .call(d3.axisBottom(x).tickFormat(game => game + 1));
  svg.append("text").attr("x", 0).attr("y", 12).text("lanes");
  svg.append("text").attr("x", 0).attr("y", height - 8).text("game");
  const way = d3.line().x((pair, game) => x(game)).y(pair => y(pair));
  const groups = rotation.groups.map((name, g) => ({ name, way: games.map(row => row[g]) }));
  groups.sort((a, b) => (a.name === chosen) - (b.name === chosen));
  svg.append("g").selectAll("path").data(groups).join("path")
    .attr("class", group => group.name === chosen ? "route chosen" : "route").attr("d", group => way(group.way));
  svg.append("g").selectAll("text").data(groups).join("text").attr("x", x(games.length - 1) + 6)
    .attr("y", group => y(group.way.at(-1)) + 4).attr("font-weight", group => group.name === chosen ? 700 : 400)
    .text(group => shortened(group.name, 4));
}

function groupChoice() {
  const choice = document.getElementById("group-choice");
  for (const name of new Set(data.rotations.flatMap(rotation => rotation.groups))) {
    choice.append(new Option(name, name));
  }
  choice.addEventListener("change", () => rotationCharts(choice.value));
}

function drawCharts() {
  scoresChart();
  windowsCharts();
  rotationCharts(document.getElementById("group-choice").value);
}
