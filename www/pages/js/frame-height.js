// For pages that hold the tree plan in an iframe: keeps the frame as tall as what it shows.
//   <script src="https://SITE/v1/frame-height.js" defer></script>
(() => {
  const { origin } = new URL(document.currentScript.src);
  addEventListener("message", ({ data, origin: from, source }) => {
    if (from !== origin || data?.slipbark !== 1 || data.type !== "height") return;
    if (!Number.isFinite(data.h)) return;
    for (const frame of document.querySelectorAll("iframe")) {
      // Only the frame that spoke, and only while it shows that site; never lower than the page gave it, or what stands
      // below would jump up.
      const least = parseFloat(frame.getAttribute("height")) || 320;
      if (source && frame.contentWindow === source) frame.style.height = `${Math.max(least, data.h)}px`;
    }
  });
})();
