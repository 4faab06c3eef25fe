// The questions of field mode: which a tree is asked, where the words of each stand in the form, and how its replies are read.

// What is asked: the field that its problems are told at, and where its words stand in the form.
export const STEPS = {
  place: { of: /^(region|place|town)/, label: "label[for=f-town]", field: "#f-town" },
  day: { of: /^(date|day)/, label: "label[for=f-day]", field: "#f-day" },
  tree: { of: /^species/, label: "label[for=f-find]", field: "#f-find" },
  size: { of: /^(stems(?!\[[1-9])|size_confirmed)/, label: "label[for=f-stems-0-diameter]", field: "#f-stems-0-diameter" },
  // The page itself asks for these, in a field of its own.
  others: { of: /^stems\[[1-9]/ },
  near: { of: /^(none_in_reach|targets(\[0\](\.kind)?)?$)/, label: "label[for=f-targets-0-kind]", field: "[name='targets[0].kind']" },
  far: { of: /^targets\[0\]\.distance/, label: "label[for=f-targets-0-distance]", field: "#f-targets-0-distance" },
  line: { of: /^line_within_reach/, label: "#f-line-within-reach > legend", field: "[name=line_within_reach]" },
};

/** The questions of a tree. */
export function steps(tree) {
  const { targets = [], none_in_reach: none } = tree.q;
  return [...(tree.asks ? ["place", "day"] : []), "tree", "size", ...(tree.several ? ["others"] : []), "near", ...(targets[0]?.kind ? ["far"] : []), ...(none ? [] : ["line"]), "answer"];
}

/** The stems of a tree as its question has them: those behind the largest are measured as that one was. */
export function stemsOf({ q, several, others = "" }) {
  const [first = {}] = q.stems ?? [];
  const sizes = several ? others.split(";").map((size) => size.trim()).filter(Boolean) : [];
  return [first, ...sizes.map((size) => ({ [("girth" in first) ? "girth" : "diameter"]: size }))];
}

/** A size, or the last of several, with a part of an inch; without one it is empty. */
export function withPart(value, part) {
  const before = value.match(/^.*;\s*/s)?.[0] ?? "";
  const whole = value.slice(before.length).match(/^\d*/)[0];
  return before + [part && whole, part].filter(Boolean).join(" ");
}

/** The words of an element. */
export const text = (node) => node?.textContent.trim().replace(/\s+/g, " ") ?? "";
/** The words of a row of a list, without the small ones under them. */
export const row_of = (label) => {
  const copy = label?.cloneNode(true);
  copy?.querySelector("small")?.remove();
  return text(copy);
};
