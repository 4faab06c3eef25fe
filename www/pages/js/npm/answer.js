// The call for pages: the module and its tables are fetched from beside this file. Importing it registers no element.
import init, * as engine from "./engine.js";

const bytes = async (address) => {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status} ${response.statusText}`);
  return new Uint8Array(await response.arrayBuffer());
};

const [, climate, regional] = await Promise.all([
  init({ module_or_path: new URL("./engine.wasm", import.meta.url) }),
  bytes(new URL("./climate.bin", import.meta.url)),
  bytes(new URL("./regional.bin", import.meta.url)),
]);
// The same answers as those of the command line: the climate and what differs by country come along.
engine.take_climate(climate);
engine.take_regional(regional);

export const answer = (question, options) => engine.answer(question, options);
export const version = () => engine.version();
export const dataVersion = () => engine.dataVersion();
