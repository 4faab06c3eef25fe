// Begins the module of the single file. Pages opened from a disk may fetch nothing: what the
// scripts after this one ask for by name was unpacked from the page itself.
const PACKED = {
  "engine.wasm": "application/wasm",
  "climate.bin": "application/octet-stream",
  "regional.bin": "application/octet-stream",
};

const fetch = async (address) => {
  const name = new URL(address, document.baseURI).pathname.split("/").pop();
  const type = PACKED[name];
  if (!type) return new Response(null, { status: 404, statusText: "it is not in the single file" });
  return new Response(document.getElementById("packed").parts[name], { headers: { "Content-Type": type } });
};
