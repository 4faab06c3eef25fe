//! The lines that put a calculator on another site, each form once: the page "Put it on your site", the form that makes
//! them, the README, and the files for other programs take them from here.

use crate::build::version::FULL;
use calc_view::out::escaped;

/// What differs from page to page.
pub(crate) struct Gaps<'a> {
    /// The address of the site, with a slash at its end.
    pub site: &'a str,
    /// Where the pages of the language begin.
    pub home: &'a str,
    /// The calculator.
    pub kind: &'a str,
    /// Attributes of the element, each with a space before it.
    pub attributes: &'a str,
    /// The same as `data-` attributes.
    pub data: &'a str,
    /// What is asked of a frame, with its question mark.
    pub query: &'a str,
    /// The words of the link.
    pub words: &'a str,
    /// The title of the frame.
    pub title: &'a str,
    /// The digests of `embed.js` and `frame-height.js` of the full version.
    pub digests: [&'a str; 2],
}

/// The forms, in the order in which they are told.
pub(crate) const FORMS: [&str; 6] = ["element", "div", "script", "frame", "height", "link"];

const LINK: &str = "<p><a href=\"{home}\">{words}</a></p>";

/// The lines of a form, with gaps in braces. Each holds the script to its digest, keeps its place in the page, and has a
/// link in it for where the rest is taken out.
pub(crate) fn lines(form: &str) -> Vec<String> {
    let script = "src=\"{embed}\" integrity=\"{embed-digest}\" crossorigin=\"anonymous\"";
    match form {
        "element" => vec![
            format!("<script {script} defer></script>"),
            format!("<slipbark-{{kind}}{{attributes}} style=\"display:block;min-height:100vh\">{LINK}</slipbark-{{kind}}>"),
        ],
        "div" => vec![
            format!("<div data-slipbark=\"{{kind}}\"{{data}} style=\"min-height:100vh\">{LINK}</div>"),
            format!("<script {script} defer></script>"),
        ],
        "script" => vec![
            LINK.to_owned(),
            format!("<script {script} data-slipbark=\"{{kind}}\"{{data}}></script>"),
        ],
        "frame" => vec![
            "<iframe src=\"{home}embed/{kind}/{query}\" title=\"{title}\" loading=\"lazy\" width=\"100%\" height=\"640\" style=\"border:0\"></iframe>".to_owned(),
            LINK.to_owned(),
        ],
        "height" => vec![
            "<script src=\"{height}\" integrity=\"{height-digest}\" crossorigin=\"anonymous\" defer></script>".to_owned(),
        ],
        _ => vec![LINK.to_owned()],
    }
}

/// The lines of a form with their gaps filled.
pub(crate) fn filled(form: &str, gaps: &Gaps<'_>) -> String {
    let embed = format!("{}{FULL}/embed.js", gaps.site);
    let height = format!("{}{FULL}/frame-height.js", gaps.site);
    let mut text = lines(form).join("\n");
    for (name, value) in [
        ("{embed}", &*embed),
        ("{embed-digest}", gaps.digests[0]),
        ("{height}", &height),
        ("{height-digest}", gaps.digests[1]),
        ("{home}", gaps.home),
        ("{kind}", gaps.kind),
        ("{attributes}", gaps.attributes),
        ("{data}", gaps.data),
        ("{query}", gaps.query),
        ("{words}", gaps.words),
        ("{title}", gaps.title),
    ] {
        text = text.replace(name, value);
    }
    text
}

/// Stands for the origin of the site, which the page itself fills in.
const ORIGIN: &str = "@@origin@@";

/// The lines of a form as a page shows them: the address is the one that the page is read from.
pub(crate) fn shown(form: &str, base: &str, gaps: &Gaps<'_>) -> String {
    let site = format!("{ORIGIN}{base}");
    let home = format!("{ORIGIN}{}", gaps.home);
    let gaps = Gaps {
        site: &site,
        home: &home,
        ..*gaps
    };
    let text = escaped(&filled(form, &gaps)).replace(ORIGIN, "<span data-origin></span>");
    format!(
        "<p class=\"calc\"><code data-snippet=\"{form}\">{}</code></p>",
        text.replace('\n', "<br>\n")
    )
}

/// All forms with their gaps, for the form that makes the lines: `{"element": "…"}`.
pub(crate) fn templates() -> serde_json::Value {
    FORMS
        .iter()
        .map(|form| ((*form).to_owned(), lines(form).join("\n").into()))
        .collect::<serde_json::Map<_, _>>()
        .into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_readme_has_the_same_lines() {
        let root = crate::project::root().unwrap();
        let readme = std::fs::read_to_string(root.join("README.md")).unwrap();
        let gaps = Gaps {
            site: "https://YOUR-COPY/",
            home: "https://YOUR-COPY/",
            kind: "tree-plan",
            attributes: "",
            data: "",
            query: "",
            words: "Plan one tree",
            title: "Tree plan calculator",
            digests: ["sha384-DIGEST"; 2],
        };
        for form in ["element", "div", "script", "frame", "height"] {
            let lines = filled(form, &gaps);
            assert!(
                readme.contains(&lines),
                "README.md should have these lines:\n\n{lines}\n"
            );
        }
    }

    #[test]
    fn each_form_holds_its_script_and_has_a_link_or_stands_beside_one() {
        for form in FORMS {
            let lines = lines(form).join("\n");
            for script in lines.lines().filter(|line| line.starts_with("<script")) {
                assert!(
                    script.contains(" integrity=\"")
                        && script.contains(" crossorigin=\"anonymous\""),
                    "{form}: {script}"
                );
            }
            assert!(lines.contains(LINK) || form == "height", "{form}");
        }
    }
}
