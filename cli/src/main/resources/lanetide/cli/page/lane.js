"use strict";

/** Bytes of films and paths from their runs; see the program's class FilmCode. */
function unpacked(text) {
  const packed = Uint8Array.from(atob(text), letter => letter.charCodeAt(0));
  const bytes = [];
  for (let at = 0; at < packed.length;) {
    const head = packed[at++];
    if (head < 128) {
      for (let i = 0; i <= head; i++) bytes.push(packed[at++]);
    } else {
      for (let i = 0; i < 257 - head; i++) bytes.push(packed[at]);
      at++;
    }
  }
  return Uint8Array.from(bytes);
}

/** The frames of each lane: film in steps by board and foot, and the boards of each style's path. */
function framesOfLanes() {
  const film = data.film;
  const cells = film.boards * film.feet;
  const films = unpacked(film.films);
  const paths = unpacked(film.paths);
  let at = 0;
  let pathAt = 0;
  return answer.lanes.map(lane => {
    let before = new Uint8Array(cells);
    return lane.games.map(game => {
      const steps = films.slice(at, at += cells);
      for (let i = 0; i < cells; i++) steps[i] += before[i];
      before = steps;
      const ways = game.windows.map(() => {
        const way = Array.from(paths.slice(pathAt, pathAt += film.pathPoints));
        return way[0] === film.noPath ? null : way.map(step => step / film.stepsABoard);
      });
      return { steps, ways };
    });
  });
}

const laneView = { lanes: [], lane: 0, time: 0, timer: null };
const element = id => document.getElementById(id);

/** The film of a frame as a picture, one dot for each board and foot; the right-hand gutter at the bottom. */
function filmPicture(frame) {
  const { boards, feet, steps, colours } = data.film;
  const canvas = document.createElement("canvas");
  canvas.width = feet;
  canvas.height = boards;
  const context = canvas.getContext("2d");
  const image = context.createImageData(feet, boards);
  for (let board = 0; board < boards; board++) {
    for (let foot = 0; foot < feet; foot++) {
      const colour = d3.rgb(colours[Math.round(frame.steps[board * feet + foot] / steps * (colours.length - 1))]);
      image.data.set([colour.r, colour.g, colour.b, 255], ((boards - 1 - board) * feet + foot) * 4);
    }
  }
  context.putImageData(image, 0, 0);
  return canvas.toDataURL();
}

/** Times are told by squad and game; a lane that stood empty has fewer. */
function times() {
  const seen = new Map();
  for (const lane of answer.lanes) {
    for (const game of lane.games) seen.set(game.squad + "\u0000" + game.afterGame, { squad: game.squad, game: game.afterGame });
  }
  const squads = answer.squads.map(squad => squad.id);
  return [...seen.values()].sort((a, b) => squads.indexOf(a.squad) - squads.indexOf(b.squad) || a.game - b.game);
}

/** The last thing known of a lane at a time, by its place among the lane's games. */
function known(lane, time) {
  const all = times();
  const order = game => all.findIndex(each => each.squad === game.squad && each.game === game.afterGame);
  let last = 0;
  answer.lanes[lane].games.forEach((game, i) => { if (order(game) <= time) last = i; });
  return last;
}

function timeLabel(time) {
  const { squad, game } = times()[time];
  return game === 0 ? `As squad ${squad} finds it` : `Squad ${squad}, after game ${game}`;
}

function chosenKinds(game) {
  const style = element("style-choice").value;
  const hand = element("hand-choice").value;
  return game.windows.map((window, i) => ({ ...window, i }))
    .filter(window => window.style === style && (hand === "both" || window.hand === hand));
}

function drawLane() {
  const game = answer.lanes[laneView.lane].games[known(laneView.lane, laneView.time)];
  const frame = laneView.lanes[laneView.lane][known(laneView.lane, laneView.time)];
  const film = data.film;
  const margin = { left: 34, right: 34, top: 22, bottom: 40 };
  const place = element("lane-picture");
  const label = `Film on lane ${answer.lanes[laneView.lane].lane}. ${timeLabel(laneView.time)}. The numbers stand in the table below.`;
  const { svg, width, height } = drawing(place, Math.min(340, Math.max(250, (place.clientWidth || 640) * 0.4)), label);
  const far = film.metric ? film.feet * 0.3048 : film.feet;
  const x = d3.scaleLinear().domain([0, film.feet]).range([margin.left, width - margin.right]);
  const along = d3.scaleLinear().domain([0, far]).range(x.range());
  const y = d3.scaleLinear().domain([0.5, film.boards + 0.5]).range([height - margin.bottom, margin.top]);
  svg.append("image").attr("href", filmPicture(frame)).attr("preserveAspectRatio", "none")
    .attr("x", x(0)).attr("y", margin.top).attr("width", x(film.feet) - x(0)).attr("height", y(0.5) - margin.top);
  const boards = [1, 5, 10, 15, 20];
  const mirrored = board => y(film.boards + 1 - board);
  svg.append("g").attr("transform", `translate(${margin.left},0)`).call(d3.axisLeft(y).tickValues(boards));
  const leftHand = svg.append("g").attr("transform", `translate(${width - margin.right},0)`)
    .call(d3.axisRight(y).tickValues(boards.map(board => film.boards + 1 - board))
      .tickFormat(board => film.boards + 1 - board));
  leftHand.select(".domain").attr("aria-hidden", "true");
  svg.append("g").attr("transform", `translate(0,${height - margin.bottom})`)
    .call(d3.axisBottom(along).ticks(ticks(width)));
  svg.append("text").attr("x", 0).attr("y", 12).text("board from the right");
  svg.append("text").attr("x", width).attr("y", 12).attr("text-anchor", "end").text("board from the left");
  svg.append("text").attr("x", width / 2).attr("y", height - 4).attr("text-anchor", "middle")
    .text(`${film.metric ? "metres" : "feet"} from the foul line`);
  for (const kind of chosenKinds(game)) drawKind(svg, kind, frame.ways[kind.i], x, kind.hand === "left" ? mirrored : y);
}

/** The path of a style and its exit window, drawn so that they stand out on light and dark film. */
function drawKind(svg, kind, way, x, y) {
  if (!way || kind.low == null) return;
  const film = data.film;
  const line = d3.line().x((board, i) => x(i * film.feet / (film.pathPoints - 1))).y(board => y(board))
    .curve(d3.curveMonotoneX)(way);
  const end = x(film.patternFt);
  const bracket = `M${end - 5},${y(kind.low)}H${end + 5}M${end},${y(kind.low)}V${y(kind.high)}M${end - 5},${y(kind.high)}H${end + 5}`;
  for (const shape of [line, bracket]) svg.append("path").attr("class", "halo").attr("d", shape);
  svg.append("path").attr("class", "path " + (kind.hand === "left" ? "left" : "")).attr("d", line);
  svg.append("path").attr("class", "path window").attr("d", bracket);
}

function drawLegends() {
  document.querySelectorAll(".film-legend").forEach(drawLegend);
}

function drawLegend(place) {
  const film = data.film;
  const { svg, width } = drawing(place, 52, `Colours of the film, from none to ${film.most.toFixed(0)} ${film.unit}`);
  const x = d3.scaleLinear().domain([0, film.most]).range([34, width - 34]);
  const step = (x(film.most) - x(0)) / film.colours.length;
  svg.append("g").selectAll("rect").data(film.colours).join("rect").attr("x", (d, i) => x(0) + i * step).attr("y", 2)
    .attr("width", step + 0.5).attr("height", 14).attr("fill", d => d);
  svg.append("g").attr("transform", "translate(0,16)").call(d3.axisBottom(x).ticks(ticks(width)));
  svg.append("text").attr("x", width / 2).attr("y", 49).attr("text-anchor", "middle")
    .text(film.unit + (film.metric ? "" : ` (1 unit is ${film.umPerUnit} \u00b5m)`));
}

/** The numbers of the lane and time shown, as the answer has them. */
function tellNumbers() {
  const game = answer.lanes[laneView.lane].games[known(laneView.lane, laneView.time)];
  const micro = data.film.shownPerUnit;
  const digits = data.film.metric ? 1 : 0;
  const rows = [
    ["Lane", answer.lanes[laneView.lane].lane],
    ["Games on this oil", game.gamesOnOil],
    ["Oil on the lane (mL)", game.volumeMl.toFixed(1)],
    [`Heads, thickest board (${data.film.unit})`, (game.headUnits * micro).toFixed(digits)],
    [`Heads, most worn board (${data.film.unit})`, (game.headUnitsLow * micro).toFixed(digits)],
    ["Past the end of the pattern (mL)", game.carrydownMl.toFixed(2)]
  ];
  for (const kind of chosenKinds(game)) {
    rows.push([`Exit window, ${kind.style}, ${kind.hand} hand (boards)`, kind.low == null
      ? "no line meets the pocket" : `${kind.low.toFixed(1)} to ${kind.high.toFixed(1)}, an average shot ${kind.best.toFixed(1)}`]);
  }
  d3.select("#lane-numbers tbody").selectAll("tr").data(rows).join(enter => {
    const row = enter.append("tr");
    row.append("th").attr("scope", "row");
    row.append("td");
    return row;
  }).each(function ([name, value]) {
    this.children[0].textContent = name;
    this.children[1].textContent = value;
  });
}

/** Every lane, small. */
function drawAllLanes() {
  answer.lanes.forEach((lane, i) => {
    const button = element("all-lanes").children[i];
    button.querySelector("img").src = filmPicture(laneView.lanes[i][known(i, laneView.time)]);
    button.setAttribute("aria-pressed", i === laneView.lane);
  });
}

function show() {
  const label = timeLabel(laneView.time);
  element("time").value = laneView.time;
  element("time").setAttribute("aria-valuetext", label);
  element("time-label").textContent = label;
  element("lane-choice").value = laneView.lane;
  const style = element("style-choice").value;
  figureNamed("lane").dataset.note = `Lane ${answer.lanes[laneView.lane].lane}, ${style}. ${label}.`;
  figureNamed("all-lanes").dataset.note = label + ".";
  drawLane();
  tellNumbers();
  drawAllLanes();
}

function stop() {
  clearInterval(laneView.timer);
  laneView.timer = null;
  element("play").textContent = "Play";
  element("play").setAttribute("aria-pressed", "false");
  element("time-label").setAttribute("aria-live", "polite");
}

function play() {
  const last = times().length - 1;
  if (laneView.time === last) laneView.time = 0;
  element("play").textContent = "Stop";
  element("play").setAttribute("aria-pressed", "true");
  element("time-label").setAttribute("aria-live", "off");
  show();
  laneView.timer = setInterval(() => {
    laneView.time++;
    show();
    if (laneView.time >= last) stop();
  }, 600);
}

function choices() {
  answer.lanes.forEach((lane, i) => {
    element("lane-choice").append(new Option(lane.lane, i));
    const button = document.createElement("button");
    button.type = "button";
    const image = document.createElement("img");
    image.alt = "";
    button.append(`Lane ${lane.lane}`, image);
    button.addEventListener("click", () => { laneView.lane = i; show(); });
    element("all-lanes").append(button);
  });
  new Set(answer.lanes[0].games[0].windows.map(window => window.style)).forEach(style =>
    element("style-choice").append(new Option(style, style)));
  element("time").max = times().length - 1;
  element("lane-choice").addEventListener("change", event => { laneView.lane = +event.target.value; show(); });
  for (const id of ["style-choice", "hand-choice"]) element(id).addEventListener("change", show);
  element("time").addEventListener("input", event => { stop(); laneView.time = +event.target.value; show(); });
  element("play").addEventListener("click", () => laneView.timer ? stop() : play());
}

function begin() {
  groupChoice();
  drawCharts();
  laneView.lanes = framesOfLanes();
  choices();
  drawLegends();
  show();
  offerPictures();
  let width = window.innerWidth;
  window.addEventListener("resize", () => {
    if (window.innerWidth === width) return;
    width = window.innerWidth;
    drawCharts();
    drawLegends();
    show();
  });
  document.documentElement.dataset.ready = "true";
}

begin();
