// Begins the module of the single file. Pages opened from a disk may fetch nothing: what the
// scripts after this one ask for by name was unpacked from the page itself.
const TYPES = { wasm: "application/wasm", bin: "application/octet-stream", css: "text/css" };

const fetch = async (address) => {
  const name = new URL(address, document.baseURI).pathname.split("/").pop();
  const type = TYPES[name.split(".").pop()];
  const part = document.getElementById("packed").parts[name];
  if (!type || !part) return new Response(null, { status: 404, statusText: "it is not in the single file" });
  return new Response(part, { headers: { "Content-Type": type } });
};
