//! An answer as plain text: the same walk as the page, written by another sink, so that both say the same in the same
//! order. In short what is folded gives its title and its key line alone, as on the page and on paper.

use crate::answer::{self, HostOptions};
use crate::out::Out;
use calc::answer::Answer;
use calc::question::Question;
use calc::question::settings::AskingGroup;
use calc::reference::Reference;

/// The whole answer as plain text, UTF-8, lines not wrapped; with what its group says where it stands on a group's page.
#[must_use]
pub fn answer(
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    group: Option<&AskingGroup>,
) -> String {
    write(Plain::default(), reference, question, answer, group)
}

/// The same in short: folds by their title and their key line.
#[must_use]
pub fn short(
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    group: Option<&AskingGroup>,
) -> String {
    let plain = Plain {
        short: true,
        ..Plain::default()
    };
    write(plain, reference, question, answer, group)
}

fn write(
    mut plain: Plain,
    reference: &'static Reference,
    question: &Question,
    answer: &Answer,
    group: Option<&AskingGroup>,
) -> String {
    let options = HostOptions {
        group,
        ..HostOptions::default()
    };
    answer::answer(&mut plain, reference, question, answer, &options);
    plain.into_string()
}

/// Classes whose elements are not read aloud on paper: links to fields, buttons, twins of drawings, the
/// printed page's own head, what only a screen reader hears.
const SKIPPED: [&str; 6] = ["vh", "chg", "twin", "sheetin", "tagno", "noprint"];

/// Writes text.
#[derive(Default)]
pub struct Plain {
    text: String,
    open: Vec<Frame>,
    /// Line ends owed before the next text.
    owed: usize,
    /// What stands before the next text: a bullet, a number, a bar.
    lead: String,
    /// Whether what is folded gives its title and key line alone.
    short: bool,
}

struct Frame {
    tag: &'static str,
    skip: bool,
    count: u32,
    heading: bool,
    /// Whether a line ends behind it.
    ends: bool,
}

impl Plain {
    /// The text so far.
    #[must_use]
    pub fn into_string(mut self) -> String {
        self.text.push('\n');
        self.text
    }

    fn owe(&mut self, lines: usize) {
        self.owed = self.owed.max(lines);
    }
}

fn is_h(tag: &str) -> bool {
    matches!(tag.as_bytes(), [b'h', b'1'..=b'6'])
}

/// What stands on lines of its own, before and behind; so does a heading, with an empty line before.
const LINES: [&str; 11] = [
    "p", "ul", "ol", "dl", "table", "section", "details", "summary", "caption", "tr", "li",
];

/// Elements that are not read at all.
const UNREAD: [&str; 3] = ["svg", "button", "figcaption"];

/// Lists whose items are counted.
const LISTS: [&str; 2] = ["ol", "ul"];

/// What names what follows, beside the headings.
const NAMES: [&str; 1] = ["caption"];

/// What begins a line and does not end one.
const STARTS: [&str; 3] = ["div", "dt", "br"];

impl Out for Plain {
    fn open(&mut self, tag: &'static str) {
        let above = self.open.last();
        // In short a fold's body is left out, and a table or list that folds inside a part altogether.
        let folded =
            tag == "details" || above.is_some_and(|it| it.tag == "details" && tag != "summary");
        let skip =
            UNREAD.contains(&tag) || above.is_some_and(|it| it.skip) || (self.short && folded);
        let title = is_h(tag);
        let heading = title || NAMES.contains(&tag) || above.is_some_and(|it| it.heading);
        let ends = title || LINES.contains(&tag);
        if !skip {
            if ends || STARTS.contains(&tag) {
                self.owe(if title { 2 } else { 1 });
            }
            match tag {
                "li" => {
                    let list = self
                        .open
                        .iter_mut()
                        .rev()
                        .find(|it| LISTS.contains(&it.tag));
                    if let Some(list) = list {
                        list.count += 1;
                        self.lead = if list.tag == "ol" {
                            cat!(crate::measure::number(list.count), ". ")
                        } else {
                            "- ".into()
                        };
                    }
                }
                "dd" => self.lead = ": ".into(),
                "td" | "th" => {
                    let row = self.open.last_mut();
                    if let Some(row) = row {
                        row.count += 1;
                        if row.count > 1 {
                            self.lead = " | ".into();
                        }
                    }
                }
                _ => {}
            }
        }
        self.open.push(Frame {
            tag,
            skip,
            count: 0,
            heading,
            ends,
        });
    }

    fn attr(&mut self, key: &'static str, value: &str) {
        if key != "class" {
            return;
        }
        let inside = self.open.iter().rev().nth(1).is_some_and(|it| it.skip);
        if let Some(frame) = self.open.last_mut()
            && frame.tag == "details"
            && value.split(' ').any(|class| class == "fold")
        {
            frame.skip = inside;
            self.owe(1);
        } else if let Some(frame) = self.open.last_mut()
            && value == "say"
        {
            // The answer's sentence is a heading, and is read as it is written.
            frame.heading = false;
        } else if let Some(frame) = self.open.last_mut()
            && value.split(' ').any(|class| SKIPPED.contains(&class))
        {
            frame.skip = true;
            // A skipped row owes nothing and leads nothing.
            self.lead.clear();
        }
    }

    fn text(&mut self, text: &str) {
        let Some(frame) = self.open.last() else {
            return;
        };
        if frame.skip || text.is_empty() {
            return;
        }
        if self.owed > 0 {
            let kept = self.text.trim_end_matches(' ').len();
            self.text.truncate(kept);
            if !self.text.is_empty() {
                for _ in 0..self.owed {
                    self.text.push('\n');
                }
            }
            self.owed = 0;
        }
        self.text.push_str(&self.lead);
        self.lead.clear();
        let spaced = matches!(self.text.as_bytes().last(), None | Some(b' ' | b'\n'));
        let text = if spaced {
            text.trim_start_matches(' ')
        } else {
            text
        };
        if frame.heading {
            for c in text.chars() {
                self.text.push(crate::words::phrase::large(c));
            }
        } else {
            self.text.push_str(text);
        }
    }

    fn close(&mut self) {
        if let Some(frame) = self.open.pop()
            && !frame.skip
            && frame.ends
        {
            self.owe(1);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::page::Page;

    #[test]
    fn lists_tables_and_headings_become_lines() {
        let mut sink = Plain::default();
        let plain = &mut Page::new(&mut sink);
        plain.open("section");
        plain.open("h3");
        plain.text("Do ");
        plain.leaf_class("span", "vh", "the numbers");
        plain.close();
        plain.open("ol");
        plain.leaf("li", "Cut.");
        plain.leaf("li", "Peel.");
        plain.close();
        plain.open("table");
        plain.open("tr");
        plain.leaf("th", "Bark");
        plain.leaf("td", "0.6 in");
        plain.close();
        plain.close();
        plain.open_class("p", "vh");
        plain.text("hidden");
        plain.close();
        plain.close();
        assert_eq!(sink.into_string(), "DO\n1. Cut.\n2. Peel.\nBark | 0.6 in\n");
    }
}
