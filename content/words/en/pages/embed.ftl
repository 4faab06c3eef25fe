### How to put it on another site, and how to serve it oneself.

embed-description = One line puts the tree plan on another site.
embed-lede = Two lines of HTML. No account, no cookie, no request to anyone but the server these files come from.
embed-settings = With your group's own settings
embed-settings-form = Local names, a short list of trees, contacts, local rules, and what you want done more carefully: [a form makes the file and the lines](embed/build/). The file's address goes into the attribute `config`; its server has to send `Access-Control-Allow-Origin` where it is not your page's own, and your page's `connect-src` has to name it. A program sets the property `config` of the element to the same object. What can't be had or used is left out as a whole; the page says so, and the event `slipbark-failure` has the code `config`. The names are in the [schema of settings](v1/config.schema.json).
embed-element = The element
embed-element-paste = Paste this where the plan should stand. The link inside is what people see until it is ready, and where it can't run.
embed-element-place = The style keeps its place, so that nothing below it jumps when it comes.
embed-element-held = The script is held to its digest, `integrity`: the browser runs no other file. It names a version that never changes; for a newer one copy the lines again. The script `v1/embed.js`, without `integrity`, follows the newest version by itself.
embed-element-language = It speaks the language of the page around it, by its `lang`: English or Spanish; an attribute `lang` of its own comes before that.
embed-div = If your site removes unknown tags
embed-div-later = A div that comes into the page later is filled too.
embed-script = Or the script alone. It puts the plan where it stands, and keeps its place. It has no `defer`: the browser waits for this small file before it draws what is below.
embed-bundles = Leave the script out of bundles and optimisers: it finds its other files by its own line, and says so in the console where it has none.
embed-makers = For sites made by a program the kit has a shortcode for Hugo and a macro for Eleventy. `slipbark build --wordpress` makes a plugin for WordPress: a block and the shortcode `[slipbark]`, with all files in it.
embed-frame = If your site allows no outside script
embed-frame-title = Tree plan calculator
embed-frame-height = It keeps that height and scrolls inside. For a frame that grows with what it shows, and is never lower than you gave it, add one line. It listens to frames that come from this site, and changes nothing but their height:
embed-link = If your site allows neither
embed-link-words = Plan one tree: method, ring width, day and cautions
embed-policy = If your site sends a Content-Security-Policy
# $script-src (Text): the directive, with this site's origin
# $connect-src (Text)
# $frame-src (Text)
embed-policy-needs = The element needs { $script-src } and { $connect-src }. The frame needs only { $frame-src }. Where WebAssembly is refused and frames are not, the element puts the frame in its own place, and says so once in the console.
embed-origin = the origin
embed-programs = For your own programs
embed-programs-schema = The names are in the [schema of a question](v1/question.schema.json), the [schema of an answer](v1/answer.schema.json) and the [TypeScript types](v1/slipbark.d.ts). A bad question gives `problems`; nothing is thrown. For many trees ask `answer(question, { "{" } changes: false { "}" })`: it leaves out the search for what would change the answer, which takes most of the time.
embed-interface = What the elements have
embed-programs-element = The same for all six. Values of an attribute that are not known are left out, and the console says so once. Presets by attributes come before a draft. What an event tells stands in its `detail`; events bubble and leave shadow roots.
embed-programs-parts = Your style sheet reaches the parts `form`, `field`, `button`, `tag`, `result`, `plot` and `working` by `::part()`. Cautions are no part.
embed-server = From your own server
embed-server-kit = Everything here is files: no program runs on the server. [The kit](slipbark-kit.zip) is one zip with all of them, a list of SHA-256 checksums, the licences of code and data, and a README. It works as it is, unpacked into any folder of any server.
embed-server-headers = It has ready files that tell the server which headers to send: `_headers` and `.htaccess` for hosts that read them, `nginx.conf` to include in your own. For any other server:
embed-headers = Table: headers of the files
embed-headers-files = Files
embed-headers-header = Header
embed-headers-else = Or else
embed-headers-kept = They are fetched again for nothing; their names change with their content, or with the version.
embed-headers-pages = Pages, sw.js, v1/
embed-headers-late = An update arrives late.
embed-headers-all = All but pages
embed-headers-origins = Other origins can't put it on their pages.
embed-headers-every = All
embed-headers-isolated = Pages that are isolated (`Cross-Origin-Embedder-Policy`) can't hold it.
embed-headers-slow = It starts more slowly.
embed-headers-each = Pages
embed-headers-policy = The `Content-Security-Policy` that stands in `_headers`
embed-headers-own = The page's own copy of it holds.
embed-stick = On a memory stick
embed-stick-file = [One file](slipbark-single.html) with everything in it. It opens from a disk in Chromium and Firefox and asks no server for anything. Names of towns, and the list of sources, are not in it.
embed-offline = With no signal
embed-offline-is = Pages of this site go on working with no signal once they are saved. Inside another site that is not promised: browsers keep the two apart.
embed-block-stands = It stands here in the page.
