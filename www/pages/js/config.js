// A group's own settings: set as an object, or fetched from an address, with the list of species that they may name
// beside them. Nothing else of theirs is ever fetched.
const PATIENCE = 5000;

/** Gives `{ value, list }`, or `{ failed }` with the reason. */
export async function settingsOf(value, address) {
  try {
    const signal = AbortSignal.timeout(PATIENCE);
    const text = async (url) => {
      const response = await fetch(url, { signal, credentials: "omit", referrerPolicy: "no-referrer" });
      if (!response.ok) throw new Error(`${url}: ${response.status} ${response.statusText}`);
      return response.text();
    };
    let base = document.baseURI;
    if (value === undefined) {
      base = new URL(address, base);
      value = JSON.parse((await text(base)).replace(/^\uFEFF/, ""));
    }
    const named = value?.species?.list;
    return { value, list: typeof named === "string" ? await text(new URL(named, base)) : undefined };
  } catch (error) {
    return { failed: error };
  }
}
