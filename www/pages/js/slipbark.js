// The JavaScript call, for pages and programs without the element:
//   import { answer } from "https://SITE/v1/slipbark.js";
import { answer, climate, dataVersion, ready, regional, version } from "../element.js";

await ready;
// Programs get the same answers as the command line, so the climate and what differs by country come along.
await Promise.allSettled([climate(), regional()]);
export { answer, dataVersion, version };
