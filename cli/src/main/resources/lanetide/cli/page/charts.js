"use strict";

/** The answer of the program, and what pictures need besides. */
const answer = JSON.parse(document.getElementById("answer").textContent);
const data = JSON.parse(document.getElementById("data").textContent);

const fairness = JSON.parse(document.getElementById("fairness-answer").textContent);
const reoil = JSON.parse(document.getElementById("reoil-answer").textContent);

/** A drawing that fills its place and keeps its shape when the page is scaled or printed. */
function drawing(place, height, label) {
  const width = Math.max(260, place.clientWidth || 640);
  const svg = d3.create("svg").attr("viewBox", [0, 0, width, height]).attr("preserveAspectRatio", "xMinYMid").attr("role", "img").attr("aria-label", label);
  place.replaceChildren(svg.node());
  return { svg, width, height };
}

/** Whether a tick fits: as many as leave sixty pixels each. */
const ticks = (pixels, each) => Math.max(2, Math.floor(pixels / (each || 60)));

/** One row for each thing: a dot at its value, a bar over its interval; a margin on both sides of zero if there is one. */
function dotsAndIntervals(place, rows, options) {
  const rowHeight = 26;
  const margin = { left: options.left, right: 28, top: 8, bottom: 40 };
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
  row.append("path").attr("class", d => d.verdict === "undecided" ? "dot hollow" : "dot")
    .attr("d", d3.symbol(d => d.verdict === "unfair" ? d3.symbolDiamond : d3.symbolCircle, 80))
    .attr("transform", (d, i) => `translate(${x(d.value)},${y(i)})`);
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

/** Advantages by kind, all on one scale, with the margin inside which they count as fair; the many groups beside the rest. */
function fairnessCharts() {
  const place = document.getElementById("fairness-chart");
  if (!fairness || !place) return;
  const few = document.createElement("div");
  const many = document.createElement("div");
  place.replaceChildren(few, many);
  const margin = [-fairness.marginPinsPerGame, fairness.marginPinsPerGame];
  const include = fairness.effects.flatMap(effect => [effect.ci90.low, effect.ci90.high]).concat(margin);
  for (const [kind, effects] of d3.group(fairness.effects, effect => effect.kind)) {
    const panel = panelOf(kind === "group" ? many : few, "By " + kind);
    dotsAndIntervals(panel, effects.map(effect => ({
      name: shortened(effect.id, 12), value: effect.advantagePinsPerGame, low: effect.ci90.low, high: effect.ci90.high,
      verdict: effect.verdict
    })), {
      left: 84, unit: "pins a game", include, margin,
      label: `Advantage by ${kind} with its interval; the numbers stand in the tables below.`
    });
  }
}

/** A place for a chart with a heading. */
function panelOf(place, title) {
  const panel = document.createElement("div");
  const head = document.createElement("h3");
  head.textContent = title;
  const chart = document.createElement("div");
  panel.append(head, chart);
  place.append(panel);
  return chart;
}

/** Curves by games on one oiling, with the recommended interval. */
function reoilCharts() {
  const place = document.getElementById("reoil-chart");
  if (!reoil || !place) return;
  place.replaceChildren();
  const curves = [
    ["costPerGame", "Cost of a pair's game", reoil.currency],
    ["spreadPins", "How far scores change", "pins a game"],
    ["windowShiftBoards", "How far windows move", "boards"]
  ];
  for (const [field, title, unit] of curves) reoilChart(panelOf(place, title), field, title, unit);
}

function reoilChart(place, field, title, unit) {
  const margin = { left: 40, right: 12, top: 20, bottom: 36 };
  const { svg, width, height } = drawing(place, 190, `${title} by games on one oiling; the numbers stand in the table below.`);
  const points = reoil.curve.filter(point => point[field] != null);
  const advice = reoil.recommendation;
  const x = d3.scaleLinear().domain([0, d3.max(reoil.curve, point => point.games)]).range([margin.left, width - margin.right]);
  const most = d3.max(points, point => point[field]) || 1;
  const y = d3.scaleLinear().domain([0, most]).nice().range([height - margin.bottom, margin.top]);
  svg.append("rect").attr("class", "margin").attr("x", x(advice.low)).attr("width", Math.max(1, x(advice.high) - x(advice.low)))
    .attr("y", margin.top).attr("height", height - margin.bottom - margin.top);
  svg.append("line").attr("class", "mark").attr("x1", x(advice.everyGames)).attr("x2", x(advice.everyGames))
    .attr("y1", margin.top).attr("y2", height - margin.bottom);
  svg.append("path").attr("class", "curve").attr("d", d3.line().x(p => x(p.games)).y(p => y(p[field]))(points));
  svg.append("g").attr("transform", `translate(${margin.left},0)`).call(d3.axisLeft(y).ticks(4));
  svg.append("g").attr("transform", `translate(0,${height - margin.bottom})`).call(d3.axisBottom(x).ticks(ticks(width, 50)));
  svg.append("text").attr("x", 0).attr("y", 12).text(unit);
  svg.append("text").attr("x", width).attr("y", height - 4).attr("text-anchor", "end").text("games on a pair");
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
  for (const kind of data.windows) windowsChart(panelOf(place, `${kind.style} (${kind.hand})`), kind, most);
}

function windowsChart(place, kind, most) {
  const margin = { left: 30, right: 8, top: 18, bottom: 34 };
  const label = `Exit window of ${kind.style}, ${kind.hand} hand, game by game; the numbers stand in the tables below.`;
  const { svg, width, height } = drawing(place, 170, label);
  const names = [...new Set(kind.points.map(point => point.squad))];
  const squads = d3.groups(kind.points.map((point, i) => ({ ...point, i: i + names.indexOf(point.squad) })), point => point.squad);
  const x = d3.scaleLinear().domain([-0.5, kind.points.length + names.length - 1.5]).range([margin.left, width - margin.right]);
  const y = d3.scaleLinear().domain([0, Math.ceil(most / 5) * 5]).range([height - margin.bottom, margin.top]);
  svg.append("g").attr("transform", `translate(${margin.left},0)`).call(d3.axisLeft(y).ticks(4));
  svg.append("text").attr("x", 0).attr("y", 11).attr("font-size", "10px").text("board");
  const games = svg.append("g");
  squads.forEach(([squad, points], s) => {
    const known = point => point.low != null;
    games.append("path").attr("class", "band").attr("d", d3.area().defined(known)
      .x(p => x(p.i)).y0(p => y(p.low)).y1(p => y(p.high))(points));
    games.append("path").attr("class", "best").attr("d", d3.line().defined(known).x(p => x(p.i)).y(p => y(p.best))(points));
    const every = Math.ceil(16 / (x(1) - x(0)));
    games.selectAll(null).data(points.filter((p, i) => i % every === 0)).join("text")
      .attr("text-anchor", "middle").attr("x", p => x(p.i)).attr("y", height - margin.bottom + 14).text(p => p.game);
    games.append("text").attr("x", (x(points[0].i) + x(points.at(-1).i)) / 2).attr("y", height - 4)
      .attr("text-anchor", "middle").text(shortened(`${squads.length > 3 ? "" : "games of "}${squad}`, 18));
    // The start of a squad: its clock time stands where there is room, without the day where there is little.
    games.append("line").attr("class", "guide").attr("x1", x(points[0].i)).attr("x2", x(points[0].i))
      .attr("y1", margin.top).attr("y2", height - margin.bottom);
    games.append("text").attr("x", x(points[0].i) + (s > 0 ? 0 : 6)).attr("y", 11).attr("text-anchor", s > 0 ? "middle" : "start")
      .text(squads.length > 3 ? data.starts[squad].split(" ").at(-1) : data.starts[squad]);
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
  fairnessCharts();
  reoilCharts();
  scoresChart();
  windowsCharts();
  rotationCharts(document.getElementById("group-choice").value);
}
