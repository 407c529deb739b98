// Charts are drawn from the table beneath them, which says the same without script. Colours are the
// stylesheet's, so that dark and paper need nothing here.
//
// Drawn in the browser, since a chart library on the server draws with fonts that the club's machine
// may not have, or writes inline styles, which our content policy forbids. As SVG with our classes,
// since a canvas would have to be told of dark and paper, and prints as a picture. D3 evaluates
// nothing as long as its CSV reader is left alone. It is large (93 kB compressed): so it is asked for
// on pages with charts alone, and for the screen only when someone scrolls there.
//
// One more chart: a figure with data-chart (band, stack or bars), data-table and data-series; column
// heads with data-series="NAME.PART", cells with data-value, rows with data-day or data-age.
/* global d3 */
const MARGIN = { top: 12, right: 20, bottom: 24, left: 54 };
const HEIGHT = 220;
const NARROW = 480;

// A row stands for a day, or for an age.
const whereOf = ({ day, age }) => (day ? new Date(`${day}T00:00:00`) : Number(age));

const rowsOf = (figure) => {
  const table = document.getElementById(figure.dataset.table);
  const columns = [...table.tHead.rows[0].cells].flatMap((cell, at) => {
    const [series, part] = (cell.dataset.series ?? "").split(".");
    return series === figure.dataset.series ? [[part, at]] : [];
  });
  return [...table.tBodies[0].rows].map((row) => ({
    day: whereOf(row.cells[0].dataset),
    few: "few" in row.dataset,
    ...Object.fromEntries(columns.map(([part, at]) => [part, Number(row.cells[at].dataset.value)])),
  }));
};

const stretch = (svg, rows, x, y, low, high, className) =>
  svg.append("path").attr("class", className).attr("d",
    d3.area(x, (row) => y(row[low]), (row) => y(row[high])).curve(d3.curveStepAfter)(rows));

const draw = (figure) => {
  const rows = rowsOf(figure);
  const width = Math.max(280, Math.floor(figure.clientWidth));
  const last = rows[rows.length - 1].day;
  const step = rows.length > 1 ? last - rows[rows.length - 2].day : 7 * 864e5;
  const byAge = typeof last === "number";
  const end = byAge ? last : new Date(last.getTime() + step);
  const limit = Number(figure.dataset.limit ?? 0);
  const top = d3.max(rows, (row) => Math.max(limit, row.high90 ?? 0, row.bar ?? 0, (row.low ?? 0) + (row.high ?? 0)));
  const scaleX = (byAge ? d3.scaleLinear : d3.scaleTime)([rows[0].day, end], [MARGIN.left, width - MARGIN.right]);
  const y = d3.scaleLinear([0, top > 0 ? top : 1], [HEIGHT - MARGIN.bottom, MARGIN.top]).nice(4);
  const x = (row) => scaleX(row.day);

  figure.querySelector("svg")?.remove();
  const svg = d3.select(figure).insert("svg", "figcaption")
    .attr("viewBox", `0 0 ${width} ${HEIGHT}`).attr("role", "img")
    .attr("aria-label", figure.querySelector("figcaption").textContent);
  svg.append("g").attr("class", "grid").attr("transform", `translate(${MARGIN.left},0)`)
    .call(d3.axisLeft(y).ticks(4).tickSize(-(width - MARGIN.left - MARGIN.right)).tickPadding(6));
  svg.append("g").attr("class", "axis").attr("transform", `translate(0,${HEIGHT - MARGIN.bottom})`)
    .call(d3.axisBottom(scaleX).ticks(width < NARROW ? 4 : 8).tickSizeOuter(0));

  // The last value holds to the end of its month or week.
  const held = [...rows, { ...rows[rows.length - 1], day: end }];
  const bar = (className, from, to) => svg.append("g").attr("class", className).selectAll("rect").data(rows).join("rect")
    .attr("x", (row) => x(row) + 0.5)
    .attr("width", (row, at) => Math.max(1, scaleX(at + 1 < rows.length ? rows[at + 1].day : end) - x(row) - (rows.length > 50 ? 1 : 3)))
    .attr("y", (row) => y(to(row))).attr("height", (row) => Math.max(0, y(from(row)) - y(to(row))));

  if (figure.dataset.chart === "band") {
    stretch(svg, held, x, y, "low90", "high90", "outer");
    if ("low50" in rows[0]) stretch(svg, held, x, y, "low50", "high50", "inner");
    // A step that rests on few parts is dashed, with the fall that leads to it.
    for (const few of [false, true]) {
      svg.append("path").attr("class", few ? "middle few" : "middle").attr("d", rows.map((row, at) => (row.few === few
        ? `M${x(row)} ${y((rows[at - 1] ?? row).median)}V${y(row.median)}H${x(held[at + 1])}` : "")).join(""));
    }
  } else if (figure.dataset.chart === "stack") {
    bar("bars", () => 0, (row) => row.low);
    bar("bars more", (row) => row.low, (row) => row.low + row.high);
  } else {
    stretch(svg, held, x, y, "low90", "high90", "outer");
    bar("bars", () => 0, (row) => row.bar);
    svg.append("path").attr("class", "limit").attr("d", `M${MARGIN.left} ${y(limit)}H${width - MARGIN.right}`);
  }
};

// As wide as there is room; on paper the drawing shrinks with its viewBox.
const watch = new ResizeObserver((seen) => seen.forEach((one) => {
  const width = Math.floor(one.contentRect.width);
  if (width > 0 && width !== Number(one.target.dataset.drawn)) {
    one.target.dataset.drawn = width;
    draw(one.target);
  }
}));
// The library is large: what is for the screen alone waits for it until someone gets there.
const LIBRARY = "/webjars/d3/7.9.0/dist/d3.min.js";
let library = null;
const load = () => library ??= new Promise((ready) => {
  const script = document.createElement("script");
  script.src = LIBRARY;
  script.addEventListener("load", ready);
  document.head.append(script);
});
const begin = (figure) => load().then(() => watch.observe(figure));
const arrive = new IntersectionObserver((seen) => seen.filter((one) => one.isIntersecting).forEach((one) => {
  arrive.unobserve(one.target);
  begin(one.target);
}), { rootMargin: "400px" });
document.querySelectorAll("figure[data-chart]").forEach((figure) => (figure.closest(".screen-only") ? arrive.observe(figure) : begin(figure)));
