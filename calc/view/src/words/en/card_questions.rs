//! The questions that a card asks where nothing can be told yet.

/// A question in a card: the nearest thing.
pub fn asks_near(within: &str) -> String {
    cat!("Nearest thing within ", within, "?")
}

/// A question in a card: a line.
pub fn asks_line(within: &str) -> String {
    cat!("Any power or phone line within ", within, "?")
}

/// A question in a card: the height.
pub const ASKS_HEIGHT: &str = "How tall is it, measured?";
/// A question in a card: the state or country.
pub const ASKS_REGION: &str = "Which state or country?";
/// A question in a card: the clone.
pub const ASKS_CLONE: &str = "Can you ring every stem of its clone?";
/// Three answers to the question of a line, with the values of their field.
pub const LINE_REPLIES: [(&str, &str); 3] =
    [("yes", "Yes"), ("no", "No"), ("cant_tell", "Can’t tell")];
/// Two answers, with the values of their field.
pub const YES_NO: [(&str, &str); 2] = [("yes", "Yes"), ("no", "No")];
/// Gives the answer.
pub const FINISH: &str = "Finish the answer";
/// The label of a list of things.
pub const WHAT_IS_IT: &str = "What is it?";
/// The label of its distance.
pub const HOW_FAR: &str = "How far from the trunk?";
/// The first line of a list.
pub const PICK_ONE: &str = "Pick one";

/// A line of the list of things.
pub fn nothing_within(within: &str) -> String {
    cat!("Nothing within ", within)
}

/// How a length is typed.
pub fn height_as(units: calc::terms::quantity::Units) -> &'static str {
    match units {
        calc::terms::quantity::Units::Us => "in feet",
        calc::terms::quantity::Units::Metric => "in metres",
    }
}
