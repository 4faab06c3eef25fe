// The trees of field mode as the file of a list: the columns of a tree list as `slipbark list`, `slipbark plan` and the page
// for lists read them. RFC 4180 with CRLF, UTF-8 with a mark of order, which spreadsheets ask for.

/** A number with the unit that its question has, where it carries none of its own. */
const length = (text, units, small) => (text === undefined || /[^\d\s.,/¼½¾]/.test(text) ? text : `${text} ${units === "metric" ? (small ? "cm" : "m") : (small ? "in" : "ft")}`);
/** What was left open is no word. */
const told = (word) => (word === "not_said" ? "" : word);

/** The sizes of its stems, the largest first: `12 in; 9 in; 7 in`. */
const sizes = ({ stems = [], units }, how) => stems.map((stem) => length(stem[how], units, true)).filter(Boolean).join("; ");

const targets = ({ targets: all = [], none_in_reach: none, units }) => {
  if (none) return "none";
  return all.map(({ kind, distance }) => [kind, length(distance, units, false)].filter(Boolean).join(" ")).join("; ");
};

/** The columns, each with its cell of a tree: { tag, where, q }, where `q` is its question as typed. */
const COLUMNS = {
  tree_id: ({ tag }) => tag,
  // A tree without a name is answered as an unknown broadleaf tree.
  species: ({ q }) => q.species ?? "unknown broadleaf",
  dbh: ({ q }) => sizes(q, "diameter"),
  girth: ({ q }) => sizes(q, "girth"),
  stems: ({ q }) => (q.stems?.length > 1 ? String(q.stems.length) : ""),
  target: ({ q }) => targets(q),
  line_within_reach: ({ q }) => (q.line_within_reach === "cant_tell" ? "unknown" : q.line_within_reach),
  height: ({ q }) => length(q.height, q.units, false),
  whole_clone: ({ q }) => told(q.whole_clone),
  same_genus_near: ({ q }) => told(q.same_genus_near),
  site: ({ where }) => where,
  lat: ({ q }) => q.place?.latitude,
  lon: ({ q }) => q.place?.longitude,
  date: ({ q }) => (q.date === "year" ? "" : q.date),
  survey_date: ({ q }) => q.today,
  // The state or country of each tree; two letters alone are read from --region only.
  region: ({ q }) => q.region,
};
/** Numbers of these may begin with a minus. */
const PLAIN = ["lat", "lon"];

function cell(text, column) {
  let written = String(text ?? "").replace(/[\r\n]+/g, " ").trim();
  // No spreadsheet takes it for a formula.
  if (!PLAIN.includes(column) && /^[=+\-@\t]/.test(written)) written = `'${written}`;
  return /[",;]/.test(written) ? `"${written.replaceAll("\"", "\"\"")}"` : written;
}

/** The file. Columns in which no tree has anything are left out, but for those that a list can't be without. */
export function file(trees) {
  const needed = ["tree_id", "species", "dbh", "target", "line_within_reach"];
  const columns = Object.keys(COLUMNS).filter((name) => needed.includes(name) || trees.some((tree) => COLUMNS[name](tree)));
  const lines = [columns, ...trees.map((tree) => columns.map((name) => cell(COLUMNS[name](tree), name)))];
  return `\ufeff${lines.map((line) => `${line.join(",")}\r\n`).join("")}`;
}

/** The tag behind another: its number one higher, as wide as it was. */
export function nextTag(tag, taken) {
  const [, before, digits] = /^(.*?)(\d*)$/.exec(tag ?? "T000");
  let number = Number(digits || 1);
  for (;;) {
    number += 1;
    const next = before + String(number).padStart(digits.length, "0");
    if (!taken.includes(next)) return next;
  }
}

/** Hands the file out as a download. */
export function handOut(name, rows) {
  const link = Object.assign(document.createElement("a"), { href: URL.createObjectURL(new Blob([rows], { type: "text/csv" })), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}
