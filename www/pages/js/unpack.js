// Opens the single file: base64 becomes bytes, the browser unpacks them, and their parts are put in place. Where that
// can't be, a line in the page says why, over what the page says without any script.
const packed = document.getElementById("packed");

const put = (name, type, bytes) => {
  const element = document.createElement(name);
  element.type = type;
  element.textContent = new TextDecoder().decode(bytes);
  document.head.append(element);
};

const unpack = async () => {
  const bytes = Uint8Array.from(atob(packed.textContent), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const all = new Uint8Array(await new Response(stream).arrayBuffer());
  let end = 0;
  const parts = {};
  for (const [, name, size] of packed.dataset.parts.matchAll(/(\S+) (\d+)/g)) {
    parts[name] = all.subarray(end, end += Number(size));
  }
  return parts;
};

const say = (id) => { document.getElementById(id).hidden = false; };

if ("DecompressionStream" in globalThis) {
  // Letters that are no base64, and a stream whose checksum or length is another, are refused.
  unpack().then((parts) => {
    packed.parts = parts;
    put("style", "text/css", parts["style.css"]);
    put("script", "module", parts["module.js"]);
  }, () => say("changed"));
} else {
  say("older");
}
