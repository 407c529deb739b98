// Enhancements only: every page does its work without this file.

const all = (selector, root = document) => root.querySelectorAll(selector);

// A second press while the first is on its way would only be answered with the first one's result.
addEventListener("submit", (event) => {
  const form = event.target;
  if (form.method !== "post" || form.hasAttribute("data-again")) return;
  if (form.hasAttribute("data-busy")) event.preventDefault();
  else if (!event.defaultPrevented) form.setAttribute("data-busy", "");
});
// Coming back with the browser's own button shows the page as it was left, guard included.
addEventListener("pageshow", () => all("form[data-busy]").forEach((form) => form.removeAttribute("data-busy")));

// After a refusal the hand belongs at the first field that needs another look.
const wrong = document.querySelector("main [aria-invalid=true], main .wrong input");
const codeBox = document.getElementById("q");
if (wrong) wrong.focus();
else if (codeBox && document.body.classList.contains("home") && matchMedia("(hover: hover) and (pointer: fine)").matches)
  codeBox.focus({ preventScroll: true }); // a hand scanner types into whatever has the focus

// On a narrow screen the row of pages scrolls; the current one should be in sight.
const here = document.querySelector(".pages [aria-current]");
if (here) {
  const row = here.closest("ul");
  row.scrollLeft = here.offsetLeft - (row.clientWidth - here.offsetWidth) / 2;
}

// The account's little sheet closes when the attention goes elsewhere.
const who = document.querySelector("details.who");
if (who) {
  addEventListener("click", (event) => { if (!who.contains(event.target)) who.open = false; });
  who.addEventListener("focusout", (event) => { if (event.relatedTarget && !who.contains(event.relatedTarget)) who.open = false; });
  who.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || !who.open) return;
    who.open = false;
    who.querySelector("summary").focus();
  });
}

// The browser's own print dialogue, for whoever does not know where it is.
for (const button of all("button[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => print());
}

// One tick for many: <input data-ticks="line"> sets every checkbox named "line" in its form and follows them.
for (const master of all("input[data-ticks]")) {
  const lines = [...all(`input[type=checkbox][name="${CSS.escape(master.dataset.ticks)}"]`, master.form)];
  const follow = () => {
    master.checked = lines.every((line) => line.checked);
    master.indeterminate = !master.checked && lines.some((line) => line.checked);
  };
  master.addEventListener("change", () => lines.forEach((line) => { line.checked = master.checked; }));
  lines.forEach((line) => line.addEventListener("change", follow));
}

// How many a press takes: <button data-counts="rig-"> says the number of ticked boxes whose name begins so.
for (const button of all("button[data-counts]")) {
  const boxes = [...all(`input[type=checkbox][name^="${CSS.escape(button.dataset.counts)}"]`, button.form)];
  const count = () => {
    const many = boxes.filter((box) => box.checked).length;
    button.textContent = many === 1 ? button.dataset.one : button.dataset.many.replace("#", many === 0 ? "no" : many);
  };
  boxes.forEach((box) => box.addEventListener("change", count));
  count();
}

// Whoever says stop is shown at once what may have been seen.
for (const stop of all(".look input[type=radio][value=stop]")) {
  stop.addEventListener("change", () => {
    stop.closest(".look").querySelector("details").open = true;
  });
}

// The gauge of a reading: asked of the server, which alone knows how to read a length and what its band is.
for (const field of all("input[data-gauge]")) {
  const slot = document.querySelector(`.gauge-slot[data-for="${CSS.escape(field.id)}"]`);
  if (!slot) continue;
  const units = [...all(".unit-switch input", field.parentElement)];
  // A tiller is judged with the distance typed before it, brace by the point it was measured to.
  const also = new URL(field.dataset.gauge, location.href).searchParams.get("with");
  const other = field.form?.elements[also];
  let waiting = 0;
  let latest = 0;
  const ask = async () => {
    const turn = ++latest;
    const typed = field.value.trim();
    if (!typed) { slot.replaceChildren(); return; }
    const address = new URL(field.dataset.gauge, location.href);
    address.searchParams.set("value", typed);
    const unit = units.find((choice) => choice.checked);
    if (unit) address.searchParams.set("unit", unit.value);
    if (other) {
      address.searchParams.set(also, other.value.trim());
      const otherUnit = field.form.elements[`${also}-unit`];
      if (otherUnit) address.searchParams.set(`${also}-unit`, otherUnit.value);
    }
    try {
      const answer = await fetch(address, { headers: { Accept: "text/html" } });
      const drawn = answer.ok && answer.status !== 204 ? await answer.text() : "";
      if (turn === latest) slot.innerHTML = drawn; // our own server's escaped template
    } catch {
      if (turn === latest) slot.replaceChildren(); // no signal: the answer after saving shows the same
    }
  };
  const soon = () => { clearTimeout(waiting); waiting = setTimeout(ask, 350); };
  field.addEventListener("input", soon);
  (other instanceof RadioNodeList ? [...other] : other ? [other] : []).forEach((one) => one.addEventListener("input", soon));
  units.forEach((choice) => choice.addEventListener("change", soon));
}
