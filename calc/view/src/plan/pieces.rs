//! plan.json some trees at a time: it is among the largest files, and the page that writes it listens for a stop.

use calc_plan::PlanFile;
use calc_plan::plan_file::shape::TreeOf;
use std::rc::Rc;

/// The key of the trees, without any. Nothing else of the file can read like this in front of them: a quote in a text has a
/// backslash before it.
const NO_TREES: &str = "\"trees\":[]";

/// What stands in front of the trees, and what behind them.
pub(super) fn around_trees(file: &PlanFile) -> (String, String) {
    let without = PlanFile {
        trees: Rc::default(),
        ..file.clone()
    };
    // Numbers and texts in structures of ours: they are always JSON, here and below.
    let text = serde_json::to_string(&without).unwrap_or_default();
    let at = text.find(NO_TREES).map_or(0, |at| at + NO_TREES.len() - 1);
    let (front, behind) = text.split_at(at);
    (front.to_owned(), [behind, "\n"].concat())
}

/// Some of the trees; `first` where none stands before them.
pub(super) fn trees(trees: &[TreeOf], first: bool, text: &mut String) {
    for (at, tree) in trees.iter().enumerate() {
        if !(first && at == 0) {
            text.push(',');
        }
        text.push_str(&serde_json::to_string(tree).unwrap_or_default());
    }
}
