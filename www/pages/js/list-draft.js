// A draft of a list on the device, only once somebody asked for it: the bytes as they were read, what was decided and typed
// since, who works when, and the days of the plan. One tab at a time writes it; the others read.

/** Where it is kept. */
const BASE = "slipbark-lists";
const STORE = "lists";
/** The version of a record's names; one with a higher number is another page's. */
export const VERSION = 1;
/** The record of the trees of field mode, which their own page writes; their file is in it as any list's. */
export const FIELD = "field";

/** Why nothing was kept or read: `refused`, `blocked`, `newer`, `full`, `other` (tab). */
export class NotKept extends Error {
  constructor(why) {
    super(why);
    this.why = why;
  }
}

const why = (error) => {
  if (error?.name === "VersionError") return "newer";
  if (error?.name === "QuotaExceededError") return "full";
  return "refused";
};

/** The base; none where there is none yet and none may be made. */
function base(make) {
  return new Promise((resolve, reject) => {
    let asked;
    try {
      asked = indexedDB.open(BASE, VERSION);
    } catch (error) {
      reject(new NotKept(why(error)));
      return;
    }
    let none = false;
    asked.onupgradeneeded = ({ oldVersion }) => {
      if (oldVersion === 0 && !make) {
        none = true;
        asked.transaction.abort();
        return;
      }
      if (!asked.result.objectStoreNames.contains(STORE)) asked.result.createObjectStore(STORE, { keyPath: "id" });
    };
    asked.onblocked = () => reject(new NotKept("blocked"));
    asked.onerror = (event) => {
      event.preventDefault();
      if (none) resolve(null);
      else reject(new NotKept(why(asked.error)));
    };
    asked.onsuccess = () => {
      // A newer page may change it.
      asked.result.onversionchange = () => asked.result.close();
      resolve(asked.result);
    };
  });
}

/** Runs in one transaction; what `run` is given is the store, what it gives is a request whose result is told. */
async function within(mode, make, run) {
  const open = await base(make);
  if (!open) return undefined;
  try {
    return await new Promise((resolve, reject) => {
      const transaction = open.transaction(STORE, mode);
      let told;
      let stopped = null;
      const failed = (error) => reject(error instanceof NotKept ? error : new NotKept(why(error)));
      transaction.oncomplete = () => resolve(told);
      transaction.onabort = () => failed(stopped ?? transaction.error);
      const stop = (reason) => { stopped = new NotKept(reason); transaction.abort(); };
      run(transaction.objectStore(STORE), (result) => { told = result; }, stop);
    });
  } catch (error) {
    throw error instanceof NotKept ? error : new NotKept(why(error));
  } finally {
    open.close();
  }
}

/** What is kept, without bytes: id, name and when, the newest first. */
export async function kept() {
  const all = await within("readonly", false, (store, tell) => {
    store.getAll().onsuccess = ({ target }) => tell(target.result);
  });
  return (all ?? []).map(({ id, name, saved_at: at, version }) => ({ id, name, at, version })).sort((a, b) => b.at - a.at);
}

/** One record, whole. */
export async function read(id) {
  const record = await within("readonly", false, (store, tell) => {
    store.get(id).onsuccess = ({ target }) => tell(target.result);
  });
  if (record && record.version > VERSION) throw new NotKept("newer");
  return record;
}

/** Keeps a record. `before`: when this tab kept it last, none for the first time; another tab that kept it since wins. */
export async function write(record, before) {
  await within("readwrite", true, (store, tell, stop) => {
    store.get(record.id).onsuccess = ({ target }) => {
      const there = target.result;
      if (there && there.version > VERSION) return stop("newer");
      // Forgotten in another tab, or kept by it.
      if (before !== null && there?.saved_at !== before) return stop("other");
      try {
        store.put(record);
      } catch (error) {
        stop(why(error));
      }
      return undefined;
    };
  });
}

/** Forgets a record. */
export function forget(id) {
  return within("readwrite", false, (store) => { store.delete(id); });
}

/** Holds the only right to write a list; false where another tab has it. Where a browser has no locks, the moment of the
    last writing tells. */
export function hold(id) {
  if (!navigator.locks) return Promise.resolve(() => {});
  return new Promise((resolve) => {
    navigator.locks.request(`slipbark-list-${id}`, { ifAvailable: true }, (lock) => {
      if (!lock) {
        resolve(null);
        return undefined;
      }
      return new Promise((release) => { resolve(release); });
    }).catch(() => resolve(() => {}));
  });
}
