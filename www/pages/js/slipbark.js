// The JavaScript call, for pages and programs without the element:
//   import { answer } from "https://SITE/v1/slipbark.js";
import { answer, ready, version } from "../element.js";

await ready;
export { answer, version };
