// The call for Node: the module and its tables are read from beside this file.
import { readFile } from "node:fs/promises";
import * as engine from "./engine.js";

const bytes = (name) => readFile(new URL(name, import.meta.url));

engine.initSync({ module: await bytes("./engine.wasm") });
// The same answers as those of the command line: the climate and what differs by country come along.
engine.take_climate(await bytes("./climate.bin"));
engine.take_regional(await bytes("./regional.bin"));

export const answer = (question, options) => engine.answer(question, options);
export const version = () => engine.version();
export const dataVersion = () => engine.dataVersion();
