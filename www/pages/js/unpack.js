// Opens the single file, after lzma.js: letters become bytes, these are unpacked, and their parts put in place. Where
// that can't be, a line in the page says why, over what the page says without any script.
const packed = document.getElementById("packed");

/** The bytes of a text in windows-1252, in lines of so many: the first letter of each was added to the others. */
const bytesOf = (text, size) => {
  const all = new TextDecoder("windows-1252").decode(Uint8Array.from({ length: 256 }, (_, byte) => byte));
  const byteOf = new Uint8Array(2 ** 16);
  for (let byte = 0; byte < 256; byte++) byteOf[all.charCodeAt(byte)] = byte;
  const bytes = new Uint8Array(text.length - Math.ceil(text.length / (size + 1)));
  let end = 0;
  let key = 0;
  for (let at = 0; at < text.length; at++) {
    const byte = byteOf[text.charCodeAt(at)];
    if (at % (size + 1) === 0) key = byte;
    else bytes[end++] = byte - key;
  }
  return bytes;
};

/** The checksum of RFC 1952, section 8. */
const crcOf = (bytes) => {
  let crc = -1;
  for (const byte of bytes) {
    crc ^= byte;
    for (let i = 0; i < 8; i++) crc = (crc >>> 1) ^ (crc & 1 && 0xEDB88320);
  }
  return ~crc >>> 0;
};

const put = (name, type, bytes) => {
  const element = document.createElement(name);
  element.type = type;
  element.textContent = new TextDecoder().decode(bytes);
  document.head.append(element);
};

// What came out of letters that were changed is not unpacked: it could be anything, and as long.
const { line, crc, parts } = packed.dataset;
const bytes = bytesOf(packed.textContent, Number(line));
if (crcOf(bytes) === Number(crc)) {
  const all = unlzma(bytes);
  let end = 0;
  packed.parts = {};
  for (const [, name, size] of parts.matchAll(/(\S+) (\d+)/g)) packed.parts[name] = all.subarray(end, end += Number(size));
  put("style", "text/css", packed.parts["style.css"]);
  put("script", "module", packed.parts["module.js"]);
} else {
  // Read as another set of letters, or changed.
  document.getElementById(document.characterSet === "windows-1252" ? "changed" : "letters").hidden = false;
}
