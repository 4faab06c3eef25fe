// For pages that hold the tree plan in an iframe: keeps the frame as tall as what it shows.
//   <script src="https://SITE/v1/frame-height.js" defer></script>
(() => {
  const { origin } = new URL(document.currentScript.src);
  addEventListener("message", ({ data, origin: from, source }) => {
    if (from !== origin || data?.slipbark !== 1 || data.type !== "height") return;
    if (!Number.isFinite(data.h)) return;
    for (const frame of document.querySelectorAll("iframe")) {
      // Only the frame that spoke, and only while it shows that site.
      if (source && frame.contentWindow === source) frame.style.height = `${Math.min(12000, Math.max(320, data.h))}px`;
    }
  });
})();
