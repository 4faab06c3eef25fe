// In place of the elements where Node makes pages, as frameworks do for the first one: there is no element to register, and
// what they import has to load all the same. The browser gets element.js and registers them there.
export {};
