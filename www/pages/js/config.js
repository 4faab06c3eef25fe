// A group's own settings: set as an object, or fetched from an address, with the list of species that they may name
// beside them. Nothing else of theirs is ever fetched.
const PATIENCE = 5000;
/** The most that is taken of a file, bytes; the build puts the number in. */
const LARGEST = "@@largest@@";

/** The text of an address, given up as soon as it is longer than is taken. */
async function textOf(url, signal, folder) {
  const response = await fetch(url, { signal, credentials: "omit", referrerPolicy: "no-referrer" });
  if (!response.ok) throw new Error(`${url}: ${response.status} ${response.statusText}`);
  if (folder) within(folder, response.url);
  const reader = response.body.getReader();
  const decoder = new TextDecoder();
  let text = "";
  for (let bytes = 0; ;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    bytes += value.length;
    if (bytes > LARGEST) {
      reader.cancel();
      throw new Error(`${url}: larger than ${LARGEST} bytes`);
    }
    text += decoder.decode(value, { stream: true });
  }
}

/** Stops at an address outside of a folder: settings of other people reach no file but those beside them. */
function within(folder, address) {
  if (!address.startsWith(folder) || /%2f|%5c/i.test(address.slice(folder.length))) {
    throw new Error(`species.list: ${address} does not lie in the folder of the settings, ${folder}`);
  }
}

/** Gives `{ value, list }`, or `{ failed }` with the reason. */
export async function settingsOf(value, address) {
  try {
    const signal = AbortSignal.timeout(PATIENCE);
    let base = document.baseURI;
    if (value === undefined) {
      base = new URL(address, base);
      value = JSON.parse(await textOf(base, signal));
    }
    const named = value?.species?.list;
    if (typeof named !== "string") return { value };
    const folder = new URL(".", base).href;
    const list = new URL(named, base).href;
    within(folder, list);
    return { value, list: await textOf(list, signal, folder) };
  } catch (error) {
    return { failed: error };
  }
}
