// Begins the single file. Pages opened from a disk may fetch nothing: what the
// scripts after this one ask for by name is unpacked from the page itself.
const PACKED = { "engine.wasm": "application/wasm", "climate.bin": "application/octet-stream" };

const fetch = async (address) => {
  const name = new URL(address, document.baseURI).pathname.split("/").pop();
  const type = PACKED[name];
  if (!type) return new Response(null, { status: 404, statusText: "it is not in the single file" });
  const letters = atob(document.getElementById(name).textContent.trim());
  const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(unpacked, { headers: { "Content-Type": type } });
};
