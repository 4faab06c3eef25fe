/** Why a file can't be used, in words; nothing where it comes as it should. Browsers do not tell pages, so it is asked for again. */
async (address, type) => {
  const { origin } = new URL(address);
  let refused = false;
  const hear = ({ effectiveDirective }) => { refused ||= effectiveDirective === "connect-src"; };
  document.addEventListener("securitypolicyviolation", hear);
  try {
    const response = await fetch(address);
    const is = response.headers.get("Content-Type") ?? "of no type";
    if (!response.ok) return `${address} is not there: its server answers ${response.status}.`;
    if (/\bhtml\b/.test(is)) return `${address} is not there: its server sends a page in its place.`;
    if (!is.includes(type)) return `${address} comes as "${is}". Its server has to send it with a Content-Type of ${type}.`;
    return "";
  } catch {
    // A file of another origin that lacks the header can be asked for, but not read.
    const there = await fetch(address, { mode: "no-cors" }).then(() => true, () => false);
    if (there) return `${origin} sends its files without the header Access-Control-Allow-Origin: *, so no page of another origin may use them.`;
    await new Promise((told) => { setTimeout(told); });
    return refused
      ? `this page's Content-Security-Policy refuses ${address}. Its script-src and connect-src have to name ${origin}.`
      : `${address} could not be fetched. Check that ${origin} can be reached.`;
  } finally {
    document.removeEventListener("securitypolicyviolation", hear);
  }
}
