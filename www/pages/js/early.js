/** The form stands before its module. A press on its button is kept until then, and said; without the module it gives
 * nothing, and what else stands in the calculator is shown under it. Put into the scripts of pages and of frames. */
() => {
  const root = document.getElementById("calculator")?.shadowRoot;
  root?.addEventListener("click", ({ target }) => {
    const built = root.querySelector("[data-built]");
    if (!built || !target.closest("button")) return;
    built.querySelector(".soon").hidden = false;
    if (!target.closest("[data-act]")) built.dataset.pressed = "";
  });
  document.addEventListener("slipbark-failure", () => {
    const built = root?.querySelector("[data-built]");
    if (!built) return;
    built.querySelector(".soon").hidden = true;
    root.append(document.createElement("slot"));
  });
}
