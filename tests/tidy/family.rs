//! The calculators' names stand in the scripts as they stand in the view.

use crate::support::root;
use calc_view::kind::Kind;

#[test]
fn the_scripts_know_every_calculator_by_its_name() {
    let names: Vec<String> = Kind::ALL
        .iter()
        .map(|kind| format!("\"{}\"", kind.name()))
        .collect();
    let line = format!("const NAMES = [{}];", names.join(", "));
    for script in ["element.js", "embed.js"] {
        let path = root().join("www/pages/js").join(script);
        let text = std::fs::read_to_string(path).expect("a script");
        assert!(text.contains(&line), "{script} should hold: {line}");
    }
    let readme = std::fs::read_to_string(root().join("README.md")).expect("README");
    for kind in Kind::ALL {
        let tag = format!("slipbark-{}", kind.name());
        assert!(readme.contains(&tag), "README names {tag}");
    }
}
