//! Titles and labels: short words that stand alone.

use calc::answer::Outcome;

/// The word on the tag.
#[must_use]
pub fn tag(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Do => "Do",
        Outcome::Wait => "Wait",
        Outcome::OtherMethod => "Other way",
        Outcome::Professional => "Professional",
        Outcome::CannotTell => "Can’t tell",
    }
}

/// The region's own heading.
pub const THE_ANSWER: &str = "The answer";
/// Numbers to carry.
pub const DO: [&str; 2] = ["Do", "the numbers to carry"];
/// The same for another method.
pub const DO_OTHER: &str = "in short steps";
/// Reach, when nothing stops.
pub const KEEP_CLEAR: [&str; 2] = ["Keep clear", "the ground it can reach"];
/// Reach, when it stops.
pub const WHY: &str = "Why";
/// The day.
pub const WHEN: [&str; 2] = ["When", "does the bark slip?"];
/// The day of another method.
pub const WHEN_OTHER: &str = "months, and what law and biology say";
/// Minutes.
pub const HOW_LONG: [&str; 2] = ["How long", "one person, this tree"];
/// Visits.
pub const THEN_CHECK: &str = "Then check";
/// Outlook.
pub const HOW_MANY_DIE: &str = "How many die, and when";
/// Habitat.
pub const LEAVES: [&str; 2] = ["What it leaves", "a standing dead tree"];
/// The same where nothing is left standing.
pub const LEAVES_STANDING: &str = "if it were left standing dead";
/// Nine rows.
pub const METHODS: [&str; 2] = ["Methods side by side", "for this stem"];
/// Cautions.
pub const CAUTIONS: [&str; 2] = ["Cautions", "who decides, and who to ask"];
/// Grades and changes.
pub const HOW_SURE: [&str; 2] = ["How sure", "and what would change it"];
/// Look-alikes.
pub const IS_IT: [&str; 2] = ["Is it this tree?", "the mark that tells"];
/// Inputs and formulas.
pub const WORKING: &str = "Working";
/// Inputs as read.
pub const TOLD: &str = "What you told us";
/// What was used instead.
pub const ASSUMED: &str = "What we assumed";
/// Formulas.
pub const MADE: &str = "How the numbers were made";
/// Printing and copying.
pub const KEEP: &str = "Keep this answer";
/// Its buttons.
pub const PRINT: &str = "Print one page";
/// For a call.
pub const PRINT_CALL: &str = "Print one page for the call";
/// Copy.
pub const COPY: &str = "Copy as text";
/// Links to a field.
pub const CHANGE: &str = "Change";
/// Links to an empty field.
pub const GIVE: &str = "Give";
/// Sources, folded.
pub const ALL_SOURCES: &str = "All sources of this answer";
/// Before a source.
pub const SOURCE: &str = "Source: ";
/// Before several.
pub const SOURCES: &str = "Sources: ";
/// A stop.
pub const STOP: &str = "Stop. Do not ring, cut or climb this tree.";
/// Near a line.
pub const STOP_LINE: &str = "Stop. Do not touch this tree or go near the line.";
/// Not checked.
pub const STOP_OPEN: &str = "Not checked. Do not start yet.";
/// Whom to call about a line.
pub const CALL_LINE: &str = "Call the line's owner.";
/// Whom to call else.
pub const CALL_ARBORIST: &str = "Call a qualified arborist.";
/// Where a group's contact would stand.
pub const CALL_MORE: [&str; 2] = [
    "Take every line as live. Only the owner's own people work near it.",
    "Ask for a tree-risk assessment, and for the answer in writing.",
];
/// On the phone.
pub const SAY: [&str; 2] = ["Say this on the phone", "three things they will ask"];
/// Its rows.
pub const SAY_ROWS: [&str; 3] = ["What it is", "How big it is", "What it could hit"];
/// Folded numbers.
pub const FOR_PROFESSIONAL: &str = "Numbers to hand to your professional";
/// Without touching the tree.
pub const TODAY_YOU: [&str; 2] = ["What you can do today", "without touching the tree"];
/// What is missing.
pub const MISSING: &str = "Find this out first";
/// If it were so.
pub const IF: &str = "If ";
/// A conditional answer's question.
pub const IF_HOLDS: &str = "the answer then, and only then";
/// If it were not.
pub const OTHERWISE: &str = "Otherwise";
/// Cautions folded.
pub const MORE_CAUTIONS: &str = "More cautions: ";
/// Merged line.
pub const CHECK_TOO: &str = "Check these too: ";
/// Who decides.
pub const DECIDES: &str = "Who decides: ";
/// Summary of problems.
pub const PROBLEMS: [&str; 2] = ["There is one thing to fix", " things to fix"];
/// Its beginning where there are several.
pub const THERE_ARE: &str = "There are ";
/// Head of the printed page.
pub const SHEET: [&str; 2] = ["Slipbark", " one tree, one answer"];
/// The 1:1 ruler.
pub const SHEET_RULER: &str = "Printed at 100 %, the foot of this page is a ruler.";
/// Inch and centimetre scales.
pub const INCH: &str = "in";
/// Centimetres.
pub const CM: &str = "cm";
/// Feet.
pub const FT: &str = "ft";
/// Metres.
pub const M: &str = "m";

/// A drawing as a table.
pub const TWIN_TRUNK: &str = "The trunk drawing as a table";
/// Reach.
pub const TWIN_REACH: &str = "The reach drawing as a table";
/// Year.
pub const TWIN_YEAR: &str = "The year tape as a table";
/// Minutes.
pub const TWIN_MINUTES: &str = "The minutes as a table";
/// Outlook.
pub const TWIN_OUTLOOK: &str = "The shares as a table";
/// Rules by month.
pub const MORE_RULES: &str = "All months that law and biology name here";
/// Table heads.
pub const HEAD_PART: [&str; 4] = ["Part", "US", "Metric", "Standing"];
/// Reach.
pub const HEAD_REACH: [&str; 4] = ["What", "US", "Metric", "What it means"];
/// Year.
pub const HEAD_YEAR: [&str; 4] = ["From", "To", "Bark", "Rules"];
/// Minutes.
pub const HEAD_MINUTES: [&str; 2] = ["Step", "Likely minutes"];
/// Outlook.
pub const HEAD_OUTLOOK: [&str; 4] = ["By the end of", "Low", "Likely", "High"];
/// Methods.
pub const HEAD_METHODS: [&str; 2] = ["Method", "How it stands, and why"];
/// The two groups of methods.
pub const METHOD_GROUPS: [&str; 2] = [
    "Without herbicide",
    "With herbicide, by a licensed applicator",
];
/// What ringing and felling cost a city, and whose figure it is.
pub const CITY_COST: [&str; 2] = [
    "A city paid about 80 times as much to take a street elm down as to ring one (",
    ").",
];
/// Stems.
pub const HEAD_STEMS: [&str; 5] = ["Stem", "Across", "Ring, at least", "Better", "What to do"];
/// Numbers for a professional.
pub const HEAD_VALUE: [&str; 3] = ["What", "Value", "Standing"];
/// Rules.
pub const HEAD_RULES: [&str; 4] = ["About", "From", "To", "Who says so"];
/// A season, in a table.
pub const SEASON: &str = "season ";

/// Rows of the trunk table.
pub const ROW_TRUNK: [&str; 5] = [
    "Trunk across",
    "Bark, one side",
    "Inside the bark",
    "Ring, at least",
    "Ring, better",
];
/// Rows of the reach table.
pub const ROW_REACH: [&str; 4] = [
    "Height used",
    "Can land",
    "Can throw wood",
    "People out while working",
];
/// Rows for a professional.
pub const ROW_PRO: [&str; 5] = [
    "Bark, one side",
    "Crown across",
    "Height",
    "Bark slips",
    "Wish of the owner",
];
/// What the owner wishes.
pub const WISH: [&str; 2] = [
    "leave a snag, as tall as they judge right",
    "the tree dead; nothing need stay standing",
];
/// In the owner's words.
pub const YOUR_WORDS: &str = "your words";

/// A caution of the merged line in two or three words; none for one that never goes there.
#[must_use]
pub fn caution_short(id: &str) -> Option<&'static str> {
    crate::rows::named(CAUTIONS_SHORT, id)
}
const CAUTIONS_SHORT: &str = concat!(
    "HZ8=wind, ice, wet ground|",
    "PL3=a branch on a line|",
    "ED3=working alone|",
    "ED5=ladders and climbing|",
    "ED6=heat|",
    "ED7=ticks|",
    "TX1=poison ivy and its kin|",
    "LW2=town and neighbourhood rules|",
    "LW3=water and wetland edges|",
    "LW7=moving wood|",
    "LW11=native and listed trees|",
    "LW12=public land and easements",
);

/// Not given.
pub const NOT_GIVEN: &str = "not given";
/// Not said.
pub const NOT_SAID: &str = "not said";
/// None.
pub const NONE: &str = "none";

/// Words of the trunk drawing.
pub const LIVING_LAYER: [&str; 2] = ["living", "layer"];
/// Bark.
pub const BARK: &str = "bark";
/// Wood.
pub const WOOD: &str = "wood";
/// Dead bark.
pub const DEAD_BARK: [&str; 2] = ["dead bark,", "leave it"];
/// In the ring.
pub const BARE_WOOD: &str = "bare wood";
/// In the better part.
pub const BETTER_TOO: &str = "better: this too";
/// Beside the least ring.
pub const AT_LEAST: &str = "at least";
/// Beside the better ring.
pub const BETTER: &str = "better";
/// Over the hand.
pub const HAND: [&str; 2] = ["your hand", "7 in, 18 cm"];

/// An estimate with its range, and what to do where it is poor.
#[must_use]
pub fn estimated(low: &str, high: &str, confidence: calc::terms::species::Confidence) -> String {
    let end = match confidence {
        calc::terms::species::Confidence::Good | calc::terms::species::Confidence::Fair => "",
        calc::terms::species::Confidence::Poor => "; poor: measure it",
    };
    cat!(estimated_from(low, high), end)
}

/// An estimate with its range.
#[must_use]
pub fn estimated_from(low: &str, high: &str) -> String {
    if low == high {
        return "estimated".into();
    }
    cat!("estimated, ", low, " to ", high)
}

/// Several stems.
pub const STEMS: &str = "Stem by stem";
/// The one to keep.
pub const KEEP_STEM: &str = "leave alone: the one to keep";
/// Before who does it.
pub const WHO_DOES_IT: &str = "Who may do it: ";
/// Before who may do it, in a row.
pub const BY: &str = "by ";
/// The method at the head, in the table.
pub const THIS_ONE: &str = " (this answer)";
/// Before what a method leaves.
pub const LEAVES_BEHIND: &str = "Leaves ";
/// Minutes of a ring that is not the headline.
pub const IF_RINGED: &str = "If you ring it:";
/// At the work day of another method.
pub const WORK_SHORT: &str = "work";
/// No value.
pub const NOT_KNOWN: &str = "not known";
/// Deaths counted on this species.
pub const DEATHS: &str = "Deaths counted on this species";
/// Heads of that table.
pub const HEAD_DEATHS: [&str; 7] = [
    "Dead, in 100",
    "After, months or seasons",
    "Trees",
    "Across",
    "Ring",
    "Season",
    "Source",
];
/// A caution from the trade or from memory.
pub const NO_SOURCE: &str = "No source: from the trade, or from memory.";
/// What would change it.
pub const WHAT_CHANGES: &str = "What would change this answer.";
/// Nothing found.
pub const NOTHING_CHANGES: &str =
    "No single change of day, distance, height, herbicide or size near these values does.";
/// What the answer rests on.
pub const SURE: [&str; 7] = [
    "Ring width",
    "Slip dates",
    "Height",
    "Reach, 1 to 2 heights",
    "Minutes",
    "Share that dies",
    "How this species responds",
];
/// Beside the ring width.
pub const WIDTHS_DIFFER: &str = "; published widths run from 1 in (2.5 cm) to one full trunk";
/// Beside the reach.
pub const REACH_SOURCES: &str = "; slope and small stems are our own assumption";
/// Beside the outlook.
pub const OUTLOOK_OWN: &str = "; counted on this species";
/// Beside the outlook of a class.
pub const OUTLOOK_CLASS: &str = "; counted on like trees, the rest is our own assumption";
/// Give or take.
#[must_use]
pub fn take_days(days: f64) -> String {
    cat!("; give or take ", crate::measure::plain(days, 0), " days")
}
/// Rows of a height.
#[must_use]
pub fn rows_from(low: &str, high: &str) -> String {
    cat!("; estimates run from ", low, " to ", high)
}
/// An unknown species.
pub const UNKNOWN_NAME: &str = "You could not name it. Take a twig with leaf, bud and fruit to someone who can, before you kill it.";
/// The worst mistake.
pub const MISTAKE: &str =
    "Killing a native tree by mistake is the worst error here. Look for the mark first.";
/// Folded look-alikes.
pub const MORE_ALIKE: &str = "More trees like it";
/// Behind a native look-alike.
pub const NATIVE: &str = " (native)";
/// From the model.
pub const MODEL: &str = "from climate or leaf-out, give or take 2 to 3 weeks";
/// Near a line, without touching it.
pub const TODAY_LINE: [&str; 4] = [
    "Stay out from under it, and keep others out.",
    "Look from a distance: which line, which pole number, does a branch touch?",
    "Call the line's owner, and say what you see.",
    "Hang the tag where people come from, so that the next person stops too.",
];
/// Measuring helps.
pub const TODAY_MEASURE: &str = "Measure the height.";
/// Whatever the reason of the stop.
pub const TODAY_ANY: [&str; 3] = [
    "Ask whether what stands near can move.",
    "Take pictures of the whole tree, its base and what it could hit.",
    "Hang the tag, so that the next person stops too.",
];
/// A conditional answer is not this tree's answer yet.
pub const ONLY_IF: &str =
    "This holds only if it is so. Until you know, it is not this tree's answer.";
/// What stands either way.
pub const OTHERWISE_HOLDS: &str = "This stands if it is not so.";
/// No rule meets the day.
pub const NO_RULE_ON_DAY: &str =
    "No months of law or biology in our table meet this day. Look for nests and bats all the same.";
/// All year.
pub const ALL_YEAR: &str = "all year";
