// The JavaScript call, for pages and programs without the element:
//   import { answer } from "https://SITE/v1/slipbark.js";
import { answer, dataVersion, ready, version } from "../element.js";

await ready;
export { answer, dataVersion, version };
