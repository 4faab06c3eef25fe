// A long list on a page, narrowed by what is typed. Without this script the whole list stands, and the fields for it
// are not shown. A line carries what finds it in `data-find`, or is found by its own text; a section without lines goes.
const form = document.querySelector("form.filter");
const list = document.getElementById(form.dataset.list);
const [text, pick] = [form.querySelector("input"), form.querySelector("select")];
const told = form.querySelector("[role=status]");

/** Small letters without accents, single spaces. */
const plain = (words) => words.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().replace(/\s+/g, " ").trim();

const lines = [...list.querySelectorAll("li")].map((line) => ({ line, words: plain(line.dataset.find ?? line.textContent) }));
const sections = [...list.querySelectorAll("section")];

function narrow() {
  const wanted = plain(text.value).split(" ");
  let shown = 0;
  for (const { line, words } of lines) {
    const fits = wanted.every((word) => words.includes(word)) && (!pick?.value || line.dataset.pick === pick.value);
    line.hidden = !fits;
    shown += fits;
  }
  for (const section of sections) section.hidden = !section.querySelector("li:not([hidden])");
  const all = shown === lines.length;
  for (const way of document.querySelectorAll("[data-whole]")) way.hidden = !all;
  told.textContent = all ? "" : form.dataset.told.replace("{shown}", shown).replace("{all}", lines.length);
}

form.addEventListener("input", narrow);
form.addEventListener("submit", (event) => event.preventDefault());
form.hidden = false;
// What the browser put back after a reload counts too.
narrow();
